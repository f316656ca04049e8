package org.loomproof.network.netlist;

import java.util.Arrays;
import java.util.function.Predicate;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.Inductor;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Motor;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.SelectorSwitch;
import org.loomproof.network.part.SteppedSwitch;
import org.loomproof.network.part.Suppressor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;

/**
 * What is set from outside on one network: switches, outputs, supply, held relays, faults. Immutable; each method returns
 * another setting and throws {@link IllegalArgumentException} when the part is missing or of the wrong kind.
 */
public final class Setting {
    /** Resistance of a shorted part: a firm accidental contact. Common practice, no published source. */
    public static final double SHORT_OHMS = 1e-3;

    private static final byte OPEN = 0;
    private static final byte CLOSED = 1;
    private static final byte HELD_RELEASED = 1;
    private static final byte HELD_PULLED_IN = 2;

    private static final byte WHOLE = 0;
    private static final byte BROKEN = 1;
    private static final byte SHORTED = 2;

    private final Network network;
    private final byte[] positions;
    private final byte[] faults;
    private final double[] stated;

    private Setting(Network network, byte[] positions, byte[] faults, double[] stated) {
        this.network = network;
        this.positions = positions;
        this.faults = faults;
        this.stated = stated;
    }

    static Setting atRest(Network network) {
        int count = network.parts().size();
        double[] stated = new double[count];
        Arrays.fill(stated, Double.NaN);
        return new Setting(network, new byte[count], new byte[count], stated);
    }

    /** Closes a switch. */
    public Setting closed(PartId id) {
        return position(id, CLOSED, part -> part instanceof Switch, "switch");
    }

    /** Opens a switch. */
    public Setting open(PartId id) {
        return position(id, OPEN, part -> part instanceof Switch, "switch");
    }

    /**
     * Puts a switch of several positions into one of them.
     *
     * @throws IllegalArgumentException also if it has no such position
     */
    public Setting selected(PartId id, int position) {
        int count = switch (network.part(id)) {
            case SelectorSwitch s -> s.positions();
            case SteppedSwitch s -> s.ohmsAt().size();
            case Part other -> throw new IllegalArgumentException(id + " is no switch of several positions: " + other);
        };
        if (position < 0 || position >= count) {
            throw new IllegalArgumentException(id + " has positions 0 to " + (count - 1) + ", not " + position);
        }
        return position(id, (byte) position, part -> true, "switch of several positions");
    }

    /** Holds a motor's shaft still. */
    public Setting stalled(PartId id) {
        return position(id, CLOSED, part -> part instanceof Motor, "motor");
    }

    /** Lets a motor turn. */
    public Setting turning(PartId id) {
        return position(id, OPEN, part -> part instanceof Motor, "motor");
    }

    /** Asks an output to drive. */
    public Setting on(PartId id) {
        return position(id, CLOSED, Setting::isOutput, "output");
    }

    /** Asks an output to let go. */
    public Setting off(PartId id) {
        return position(id, OPEN, Setting::isOutput, "output");
    }

    /** Keeps a relay's contacts where they are told, whatever the coil does: welded, stuck, or moved by hand. */
    public Setting contactHeld(PartId id, RelayPosition held) {
        byte position = switch (held) {
            case RELEASED -> HELD_RELEASED;
            case PULLED_IN -> HELD_PULLED_IN;
        };
        return position(id, position, part -> part instanceof Relay, "relay");
    }

    /** Lets the coil move a relay's contacts again. */
    public Setting contactFree(PartId id) {
        return position(id, OPEN, part -> part instanceof Relay, "relay");
    }

    /** Gives a battery or a pulsed source another open-circuit voltage; a pulsed source then stands still at it. */
    public Setting emf(PartId id, double volts) {
        if (!Double.isFinite(volts)) {
            throw new IllegalArgumentException(id + ": volts must be finite, was " + volts);
        }
        return stated(id, volts, Setting::isSource, "battery or pulsed source");
    }

    /** Gives a resistor, wire, fuse, meter, inductor or relay coil another resistance: a bad joint, a hot coil. */
    public Setting ohms(PartId id, double ohms) {
        if (!(ohms > 0) || Double.isInfinite(ohms)) {
            throw new IllegalArgumentException(id + ": ohms must be above zero and finite, was " + ohms);
        }
        return stated(id, ohms, Setting::hasOhms, "resistor, wire, fuse, meter, inductor or relay");
    }

    /** Takes a part out of the network: no current passes any of its pins. */
    public Setting broken(PartId id) {
        return fault(id, PartFault.BROKEN);
    }

    /** Joins the two pins of a two-pin part other than a source by {@link #SHORT_OHMS}. */
    public Setting shorted(PartId id) {
        Part part = network.part(id);
        if (part.pins().size() != 2 || isSource(part)) {
            throw new IllegalArgumentException(
                    id + " cannot be shorted: it is not a two-pin part without a source: " + part);
        }
        return fault(id, PartFault.SHORTED);
    }

    /** Makes a broken or shorted part whole again. */
    public Setting whole(PartId id) {
        return fault(id, PartFault.NONE);
    }

    /** Sets one part as it is set in a setting of another network that has the same part. */
    public Setting like(Setting other, PartId id) {
        int here = network.indexOf(id);
        int there = other.network.indexOf(id);
        if (!network.parts().get(here).equals(other.network.parts().get(there))) {
            throw new IllegalArgumentException("the two networks differ in part " + id);
        }
        byte[] newPositions = positions.clone();
        byte[] newFaults = faults.clone();
        double[] newStated = stated.clone();
        newPositions[here] = other.positions[there];
        newFaults[here] = other.faults[there];
        newStated[here] = other.stated[there];
        return new Setting(network, newPositions, newFaults, newStated);
    }

    /** The network it is a setting of. */
    public Network network() {
        return network;
    }

    /** Whether the switch is closed, the output asked to drive or the motor held still. */
    public boolean isOn(PartId id) {
        return isOn(network.indexOf(id));
    }

    /** As {@link #isOn(PartId)}, by the part's place in the network. */
    public boolean isOn(int partIndex) {
        return positions[partIndex] == CLOSED;
    }

    /** Where a switch of several positions stands, by the part's place in the network. */
    public int selected(int partIndex) {
        return positions[partIndex];
    }

    /** Whether a relay's contacts are held, by the part's place in the network. */
    public boolean isHeld(int partIndex) {
        return positions[partIndex] != OPEN;
    }

    /** Whether a relay's contacts are held pulled in, by the part's place in the network. */
    public boolean isHeldPulledIn(int partIndex) {
        return positions[partIndex] == HELD_PULLED_IN;
    }

    /** The fault of a part. */
    public PartFault fault(PartId id) {
        return fault(network.indexOf(id));
    }

    /** The fault of a part by its place in the network. */
    public PartFault fault(int partIndex) {
        return switch (faults[partIndex]) {
            case WHOLE -> PartFault.NONE;
            case BROKEN -> PartFault.BROKEN;
            default -> PartFault.SHORTED;
        };
    }

    private static byte code(PartFault fault) {
        return switch (fault) {
            case NONE -> WHOLE;
            case BROKEN -> BROKEN;
            case SHORTED -> SHORTED;
        };
    }

    /** The voltage or resistance stated for a part by its place in the network, or NaN when it is as built. */
    public double stated(int partIndex) {
        return stated[partIndex];
    }

    /** The first part from {@code from} on that is set differently in the other setting, or -1. Both of one network. */
    @SuppressWarnings("ReferenceEquality") // the very same array need not be looked through
    public int findDifference(Setting other, int from) {
        int count = positions.length;
        int at = count;
        // Settings made from one another share what they do not change.
        if (positions != other.positions) {
            at = firstDifference(Arrays.mismatch(positions, from, at, other.positions, from, at), from, at);
        }
        if (faults != other.faults) {
            at = firstDifference(Arrays.mismatch(faults, from, at, other.faults, from, at), from, at);
        }
        if (stated != other.stated) {
            at = firstDifference(Arrays.mismatch(stated, from, at, other.stated, from, at), from, at);
        }
        return at == count ? -1 : at;
    }

    private static int firstDifference(int mismatch, int from, int none) {
        return mismatch < 0 ? none : from + mismatch;
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof Setting other && network.equals(other.network) && findDifference(other, 0) < 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(positions) + Arrays.hashCode(faults)) + Arrays.hashCode(stated);
    }

    private static boolean isSource(Part part) {
        return part instanceof Battery || part instanceof PulsedSource;
    }

    private static boolean isOutput(Part part) {
        return part instanceof LowSideOutput || part instanceof HighSideOutput;
    }

    private static boolean hasOhms(Part part) {
        return switch (part) {
            case Resistor r -> true;
            case Wire w -> true;
            case Fuse f -> true;
            case Meter m -> true;
            case Relay r -> true;
            case Battery b -> false;
            case Switch s -> false;
            case Diode d -> false;
            case Lamp l -> false;
            case LowSideOutput o -> false;
            case HighSideOutput o -> false;
            case LogicInput i -> false;
            case Inductor i -> true;
            case Capacitor c -> false;
            case Zener z -> false;
            case Suppressor s -> false;
            case Motor m -> false;
            case PulsedSource p -> false;
            case SelectorSwitch s -> false;
            case SteppedSwitch s -> false;
        };
    }

    private int indexOf(PartId id, Predicate<Part> fits, String wanted) {
        int index = network.indexOf(id);
        Part part = network.parts().get(index);
        if (!fits.test(part)) {
            throw new IllegalArgumentException(id + " is no " + wanted + ": " + part);
        }
        return index;
    }

    private Setting position(PartId id, byte position, Predicate<Part> fits, String wanted) {
        byte[] changed = positions.clone();
        changed[indexOf(id, fits, wanted)] = position;
        return new Setting(network, changed, faults, stated);
    }

    private Setting stated(PartId id, double value, Predicate<Part> fits, String wanted) {
        double[] changed = stated.clone();
        changed[indexOf(id, fits, wanted)] = value;
        return new Setting(network, positions, faults, changed);
    }

    private Setting fault(PartId id, PartFault fault) {
        byte[] changed = faults.clone();
        changed[network.indexOf(id)] = code(fault);
        return new Setting(network, positions, changed, stated);
    }
}
