package org.loomproof.workshop.prover.damage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fault.Fault;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.fault.Slip;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/**
 * What a mishap makes of the fitted vehicle. Two mishaps with equal damages are electrically one.
 *
 * @param plan what is in the car by then
 * @param changes what is otherwise besides
 */
public record Damage(Plan plan, List<Change> changes) {

    public Damage {
        changes = List.copyOf(changes);
    }

    /** A fuse that has opened, of the factory's or of the plan's. */
    public static Damage openedFuse(Plan plan, PartId fuse) {
        return new Damage(plan, List.of(new Change.Broken(fuse)));
    }

    /**
     * The damage of a mishap.
     *
     * @param whole the fitted vehicle as planned
     */
    public static Damage of(Mishap mishap, Plan plan, Wired whole) {
        return switch (mishap) {
            case Slip.LeftOut(AddedPartId part) ->
                new Damage(plan, List.of(new Change.Broken(Changes.network(whole, part))));
            case Slip.Rewiring slip -> new Damage(slip.on(plan), List.of());
            case Slip.BadJoint slip -> new Damage(plan, Changes.open(whole, slip.wire()));
            case Fault fault -> new Damage(plan, Changes.of(fault, plan, whole));
        };
    }

    /**
     * The damage of two mishaps at once. Empty where they are not two, such as a wire that is open and badly joined, and where
     * what they make of the plan depends on which came first.
     *
     * @param whole the fitted vehicle as planned
     */
    public static Optional<Damage> both(Mishap one, Mishap other, Brief brief, Plan plan, Wired whole) {
        Plan rewired = on(other, on(one, plan));
        if (isSameThing(one, other) || !rewired.equals(on(one, on(other, plan)))) {
            return Optional.empty();
        }
        Wired wired = rewired.equals(plan) ? whole : VehicleWiring.fitted(brief, rewired, Corner.TYPICAL);
        List<Change> changes = Stream.of(one, other)
                .filter(mishap -> !isRewiring(mishap))
                .flatMap(mishap -> of(mishap, rewired, wired).changes().stream())
                .toList();
        return Optional.of(new Damage(rewired, changes));
    }

    private static Plan on(Mishap mishap, Plan plan) {
        return mishap instanceof Slip.Rewiring slip && isRewiring(slip) ? slip.on(plan) : plan;
    }

    /** A part that was left out is drawn as one that conducts nowhere. */
    private static boolean isRewiring(Mishap mishap) {
        return mishap instanceof Slip.Rewiring && !(mishap instanceof Slip.LeftOut);
    }

    /** A thing has one fault; how it was joined is another matter. */
    private static boolean isSameThing(Mishap one, Mishap other) {
        List<String> names = other.names().stream().map(Object::toString).toList();
        return isRewiring(one) == isRewiring(other)
                && one.names().stream().map(Object::toString).anyMatch(names::contains);
    }

    /** Whether what the wires join is as planned. */
    boolean isWiredAs(Plan planned) {
        List<AddedWire> wires = planned.wires();
        return plan.wires().equals(wires) && plan.parts().equals(planned.parts());
    }

    /** The vehicle with the damage, every figure at its typical value. */
    public Vehicle vehicle(Brief brief) {
        return vehicle(brief, Corner.TYPICAL);
    }

    /** The vehicle with the damage. */
    public Vehicle vehicle(Brief brief, Corner corner) {
        Wired wired = VehicleWiring.fitted(brief, plan, corner);
        List<Resistor> joined = changes.stream()
                .filter(Change.Joined.class::isInstance)
                .map(change -> ((Change.Joined) change).resistor())
                .toList();
        return Vehicle.of(wired.withMore(joined, Phrase.of("origin.touching")), brief, this::on);
    }

    private Setting on(Setting setting) {
        Setting laid = setting;
        for (Change change : changes) {
            laid = change.on(laid);
        }
        return laid;
    }
}
