package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.words.Phrase;

/**
 * An added wire that is joined to a factory wire which the key alone makes alive, and keeps alive while the starter turns
 * (terminal 15), whatever it is called.
 *
 * @param wire from the factory wire on
 * @param circuit the factory wire's
 * @param other its other end
 */
record IgnitionTap(AddedWire wire, CircuitId circuit, End other) {

    /** Alive is a wire with this share of the battery's volts; common practice, no published source. */
    private static final double ALIVE_SHARE = 0.85;

    /** A fuse that carries this share of a short's current stands before it. */
    private static final double BEFORE_SHARE = 0.5;

    /** Every such tap of the plan, in the order of its wires. */
    static List<IgnitionTap> list(Fitting fitting) {
        List<IgnitionTap> taps = new ArrayList<>();
        for (AddedWire wire : fitting.plan().wires()) {
            add(taps, fitting, wire, wire.from(), wire.to());
            add(taps, fitting, wire, wire.to(), wire.from());
        }
        return taps;
    }

    private static void add(List<IgnitionTap> taps, Fitting fitting, AddedWire wire, End end, End other) {
        if (end instanceof End.Tap(CircuitId circuit) && isIgnition(fitting, circuit)) {
            taps.add(new IgnitionTap(wire, circuit, other));
        }
    }

    private static boolean isIgnition(Fitting fitting, CircuitId circuit) {
        List<String> keys = Operable.KEY_POSITIONS;
        return isAlive(fitting, circuit, keys.get(2))
                && isAlive(fitting, circuit, keys.get(3))
                && !isAlive(fitting, circuit, keys.get(0));
    }

    private static boolean isAlive(Fitting fitting, CircuitId circuit, String key) {
        Node wire = fitting.stock().wired().factory().before().get(circuit);
        return wire != null
                && fitting.stock().wired().network().hasNode(wire)
                && settled(fitting.stock(), key)
                        .filter(point -> point.volts(wire)
                                > ALIVE_SHARE * SupplyPoint.REST.volts().value())
                        .isPresent();
    }

    private static Optional<OperatingPoint> settled(Vehicle vehicle, String key) {
        return new Workbench()
                .settled(vehicle.wired(), vehicle.settings().of(ByFigures.withKey(key, SupplyPoint.REST)));
    }

    /** The fuse to which the wire leads and nothing else; empty where it leads to something else. */
    Optional<AddedPart.Fuse> fuse(Fitting fitting) {
        return other instanceof End.OfPart part
                ? fitting.plan()
                        .findPart(part.part())
                        .filter(AddedPart.Fuse.class::isInstance)
                        .map(AddedPart.Fuse.class::cast)
                : Optional.empty();
    }

    /**
     * The factory fuses that a short to the body behind the tap's own fuse is drawn through, the key on: none where the sheet
     * draws none; empty when no operating point is found.
     */
    Optional<List<FactoryFuse>> factoryFuses(Fitting fitting, AddedPart.Fuse fuse) {
        String far = ((End.OfPart) other).terminal().equals("1") ? "2" : "1";
        Resistor touching = new Resistor(
                new PartId("short behind " + fuse.id()),
                VehicleWiring.terminal(fuse.id(), far),
                Node.CHASSIS,
                Shorts.OHMS);
        Vehicle shorted = fitting.fitted()
                .with(fitting.fitted().wired().withMore(List.of(touching), Phrase.of("origin.touching")));
        return settled(shorted, Operable.KEY_POSITIONS.get(2))
                .map(point -> shorted.wired().network().parts().stream()
                        .filter(Fuse.class::isInstance)
                        .filter(part -> carries(point, part, touching))
                        .flatMap(part -> FactoryFuse.of(fitting, shorted.wired(), part.id()).stream())
                        .toList());
    }

    private static boolean carries(OperatingPoint point, Part part, Resistor touching) {
        return Math.abs(point.amps(part.id())) > BEFORE_SHARE * Math.abs(point.amps(touching.id()));
    }
}
