package org.loomproof.workshop.prover.damage;

import java.util.List;
import java.util.Set;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Wire;
import org.loomproof.network.solve.OperatingPoint;

/**
 * One thing that is otherwise in a network. Each knows when it makes no difference: by the substitution theorem a part that
 * carries nothing may be taken away, and two nodes at one voltage may be joined, and every other volt and amp stays.
 */
public sealed interface Change {

    /** A current that is none: over the largest pull resistor in use it moves a wire by some millivolts. */
    double NO_AMPS = 1e-7;

    /** Volts that no meter tells apart. */
    double NO_VOLTS = 1e-4;

    /** The setting with it; a part that the network lacks is left alone. */
    Setting on(Setting setting);

    /** Whether the whole network, at this point of rest, would be at the same one with the change. */
    boolean leavesAlone(OperatingPoint whole);

    private static boolean has(Network network, PartId part) {
        return network.findPart(part).isPresent();
    }

    /** True when nothing flows in or out of the part. */
    static boolean isIdle(OperatingPoint point, Part part) {
        for (Pin pin : part.pins()) {
            if (Math.abs(point.ampsInto(part.id(), pin.name())) > NO_AMPS) {
                return false;
            }
        }
        return true;
    }

    /** True when the two nodes are there, held, and at one voltage. */
    static boolean areLevel(OperatingPoint point, Node one, Node other) {
        Network network = point.network();
        return network.hasNode(one)
                && network.hasNode(other)
                && Math.abs(point.volts(one, other)) < NO_VOLTS // asked first: it is the quickest, and the rarest
                && !point.isFloating(one)
                && !point.isFloating(other);
    }

    /** The part conducts nowhere. */
    record Broken(PartId part) implements Change {
        @Override
        public Setting on(Setting setting) {
            return has(setting.network(), part) ? setting.broken(part) : setting;
        }

        /** Where some input has no resistor of its own to hold it, a wire without current may still be what holds it. */
        @Override
        public boolean leavesAlone(OperatingPoint whole) {
            return !has(whole.network(), part)
                    || (isIdle(whole, whole.network().part(part)) && !mayFloat(whole.network()));
        }

        private static boolean mayFloat(Network network) {
            return network.parts().stream()
                    .anyMatch(p -> p instanceof LogicInput input
                            && input.pullUpOhms().isEmpty()
                            && input.pullDownOhms().isEmpty());
        }
    }

    /** The two pins of the part are joined. */
    record Shorted(PartId part) implements Change {
        @Override
        public Setting on(Setting setting) {
            return has(setting.network(), part) ? setting.shorted(part) : setting;
        }

        @Override
        public boolean leavesAlone(OperatingPoint whole) {
            if (!has(whole.network(), part)) {
                return true;
            }
            Part it = whole.network().part(part);
            return areLevel(whole, it.pins().get(0).node(), it.pins().get(1).node());
        }
    }

    /** The part, or a relay's coil, has another resistance. */
    record Ohms(PartId part, double ohms) implements Change {
        @Override
        public Setting on(Setting setting) {
            Part it = setting.network().findPart(part).orElse(null);
            return it instanceof Wire || it instanceof Resistor || it instanceof Relay
                    ? setting.ohms(part, ohms)
                    : setting;
        }

        @Override
        public boolean leavesAlone(OperatingPoint whole) {
            return !has(whole.network(), part) || Math.abs(whole.amps(part)) * Math.max(2 * ohms, 1) < NO_VOLTS;
        }
    }

    /** The relay's contacts stay where they are. */
    record Held(PartId relay, RelayPosition at) implements Change {
        @Override
        public Setting on(Setting setting) {
            return setting.network().findPart(relay).orElse(null) instanceof Relay
                    ? setting.contactHeld(relay, at)
                    : setting;
        }

        @Override
        public boolean leavesAlone(OperatingPoint whole) {
            return !has(whole.network(), relay) || whole.relayPosition(relay) == at;
        }
    }

    /** The output is never asked to drive. */
    record Off(PartId output) implements Change {
        @Override
        public Setting on(Setting setting) {
            Part part = setting.network().findPart(output).orElse(null);
            return part instanceof LowSideOutput || part instanceof HighSideOutput ? setting.off(output) : setting;
        }

        @Override
        public boolean leavesAlone(OperatingPoint whole) {
            return !has(whole.network(), output) || !whole.setting().isOn(output);
        }
    }

    /** Two nodes are joined by a resistor that was not there. */
    record Joined(PartId by, Node one, Node other, double ohms) implements Change {

        Resistor resistor() {
            return new Resistor(by, one, other, ohms);
        }

        @Override
        public Setting on(Setting setting) {
            return setting;
        }

        @Override
        public boolean leavesAlone(OperatingPoint whole) {
            return areLevel(whole, one, other);
        }
    }

    /** Some parts are gone, or joined elsewhere, and others have come. */
    record Rewired(List<Part> gone, List<Part> come) implements Change {
        public Rewired {
            gone = List.copyOf(gone);
            come = List.copyOf(come);
        }

        /** What differs between two networks, but for parts that other changes speak of. */
        static Rewired between(Network whole, Network rewired, Set<PartId> spokenOf) {
            return new Rewired(
                    notIn(rewired, whole),
                    notIn(whole, rewired).stream()
                            .filter(part -> !spokenOf.contains(part.id()))
                            .toList());
        }

        private static List<Part> notIn(Network other, Network network) {
            return network.parts().stream()
                    .filter(p -> !p.equals(other.findPart(p.id()).orElse(null)))
                    .toList();
        }

        @Override
        public Setting on(Setting setting) {
            return setting;
        }

        @Override
        public boolean leavesAlone(OperatingPoint whole) {
            if (gone.isEmpty() && come.isEmpty()) {
                return true;
            }
            return gone.stream().allMatch(part -> !has(whole.network(), part.id()) || isIdle(whole, part))
                    && come.stream().allMatch(part -> isLevelWire(whole, part))
                    && !Broken.mayFloat(whole.network());
        }

        private static boolean isLevelWire(OperatingPoint whole, Part part) {
            return part instanceof Wire wire && areLevel(whole, wire.a(), wire.b());
        }
    }
}
