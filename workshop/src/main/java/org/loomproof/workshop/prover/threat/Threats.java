package org.loomproof.workshop.prover.threat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.claim.StarterCut;
import org.loomproof.workshop.prover.claim.StartsAnyway;
import org.loomproof.workshop.prover.damage.Change;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Nearby;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.ThreatResult;
import org.loomproof.workshop.prover.verdict.ThreatResult.Outcome;
import org.loomproof.workshop.trade.threat.Threat;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.words.Phrase;

/** Tries every threat of the list on a plan that keeps the engine from starting. */
public final class Threats {

    /** A short piece of wire with its two clips. */
    private static final double BRIDGE_OHMS = 0.02;

    private final Fitting fitting;

    private Threats(Fitting fitting) {
        this.fitting = fitting;
    }

    /** One thing done. */
    private record Deed(String id, Phrase words, List<Change> changes) {}

    /**
     * What comes of each, in the list's order; nothing where the plan keeps nothing from starting, or does not know how yet.
     * Every figure is at its typical value, and everything
     * that the starter does not hang on at rest.
     */
    public static List<ThreatResult> of(Fitting fitting) {
        return new Threats(fitting).results();
    }

    private List<ThreatResult> results() {
        if (StartsAnyway.list(fitting).isEmpty()) {
            return List.of();
        }
        return Threat.list().stream()
                .flatMap(threat -> deeds(threat).stream())
                .flatMap(deed -> tried(deed).stream())
                .toList();
    }

    private List<ThreatResult> tried(Deed deed) {
        Vehicle damaged = new Damage(fitting.plan(), deed.changes()).vehicle(fitting.brief());
        return StartsAnyway.list(new Fitting(fitting.brief(), fitting.plan(), fitting.stock(), damaged)).stream()
                .map(starter -> result(deed, starter, damaged))
                .toList();
    }

    private ThreatResult result(Deed deed, StartsAnyway starter, Vehicle damaged) {
        List<Nearby> looks = Nearby.look(
                fitting.brief(), fitting.stock(), damaged, List.of(starter.withIgnition(), starter.without()));
        Nearby on = looks.getFirst();
        Nearby off = looks.getLast();
        Outcome otherwise = on.isDecided() && off.isDecided() ? Outcome.DOES_NOT_START : Outcome.UNDECIDED;
        Outcome turning = off.soonestBroken().isPresent() ? Outcome.TURNS_ONLY : otherwise;
        StepsTo stepsTo = new StepsTo(fitting.brief().sheet(), fitting.brief().kit());
        return new ThreatResult(
                deed.id() + " " + starter.load(),
                deed.words(),
                fitting.stock().wired().words(starter.withIgnition().about()),
                on.soonestBroken().isPresent() ? Outcome.STARTS : turning,
                on.soonestBroken().or(off::soonestBroken).map(stepsTo::list).orElse(List.of()));
    }

    private List<Deed> deeds(Threat threat) {
        return switch (threat) {
            case Threat.Bridge bridge -> bridges(bridge);
            case Threat.TakeOut out ->
                switch (out.thing()) {
                    case CONTROLLER -> List.of(deed(out, controller()));
                    case GROUND -> List.of(deed(out, broken(controllerParts().groundSwitches())));
                    case FUSES -> eachTakenOut(out, fuses());
                    case RELAYS -> eachTakenOut(out, relays());
                };
        };
    }

    private static Deed deed(Threat threat, List<Change> changes) {
        return new Deed(threat.name(), Phrase.of("threat." + threat.name()), changes);
    }

    private List<Deed> eachTakenOut(Threat threat, Set<PartId> parts) {
        return parts.stream()
                .map(part -> {
                    Phrase words = fitting.fitted().wired().words(part);
                    return new Deed(
                            threat.name() + " " + words.arguments().getFirst(),
                            Phrase.of("threat." + threat.name(), words),
                            List.of(new Change.Broken(part)));
                })
                .toList();
    }

    private List<Deed> bridges(Threat.Bridge bridge) {
        List<Deed> deeds = new ArrayList<>();
        for (CircuitId circuit : StarterCut.circuits(fitting)) {
            Node one = node(circuit, bridge.one());
            Node other = node(circuit, bridge.other());
            if (!one.equals(other)) {
                Change joined = new Change.Joined(new PartId(bridge.name()), one, other, BRIDGE_OHMS);
                Phrase words = Phrase.of("threat." + bridge.name(), circuit);
                deeds.add(new Deed(bridge.name() + " " + circuit, words, List.of(joined)));
            }
        }
        return deeds;
    }

    private Node node(CircuitId circuit, Threat.Spot spot) {
        return switch (spot) {
            case BEFORE_CUT ->
                Objects.requireNonNull(
                        fitting.fitted().wired().factory().before().get(circuit));
            case AFTER_CUT ->
                Objects.requireNonNull(
                        fitting.fitted().wired().factory().after().get(circuit));
            case PLUS -> fitting.fitted().wired().post();
        };
    }

    private ControllerParts controllerParts() {
        return fitting.fitted().wired().controller().orElseThrow();
    }

    /** All plugs out: nothing that belongs to the controller conducts. */
    private List<Change> controller() {
        ControllerParts parts = controllerParts();
        List<PartId> out = new ArrayList<>(parts.supplySwitches());
        out.addAll(parts.groundSwitches());
        parts.outputs().values().stream().map(Reach::part).forEach(out::add);
        parts.inputs().values().stream().map(InputReach::part).forEach(out::add);
        return broken(out);
    }

    private static List<Change> broken(List<PartId> parts) {
        return parts.stream().map(Change.Broken::new).map(Change.class::cast).toList();
    }

    /** The hookups of the interrupt, and of what the controller lives on. */
    private List<Hookup.Connect> hookups() {
        return fitting.connected().stream()
                .filter(c -> c.serves() == Wish.STARTER_INTERRUPT || c.serves() == Wish.BASICS)
                .toList();
    }

    private Set<PartId> relays() {
        Set<PartId> relays = new LinkedHashSet<>();
        for (Hookup.Connect connect : fitting.connected(Wish.STARTER_INTERRUPT)) {
            connect.parts().stream().filter(id -> is(id, AddedPart.Relay.class)).forEach(id -> relays.add(added(id)));
        }
        return relays;
    }

    private Set<PartId> fuses() {
        Set<PartId> fuses = new LinkedHashSet<>();
        for (Hookup.Connect connect : hookups()) {
            connect.parts().stream().filter(id -> is(id, AddedPart.Fuse.class)).forEach(id -> fuses.add(added(id)));
            connect.circuits().forEach(circuit -> fuses.addAll(factoryFuses(circuit)));
        }
        return fuses;
    }

    private boolean is(AddedPartId id, Class<? extends AddedPart> kind) {
        return fitting.plan().findPart(id).filter(kind::isInstance).isPresent();
    }

    private PartId added(AddedPartId id) {
        return Objects.requireNonNull(fitting.fitted().wired().added().parts().get(id))
                .part();
    }

    private List<PartId> factoryFuses(CircuitId circuit) {
        Set<String> names = new LinkedHashSet<>();
        fitting.brief().sheet().circuit(circuit).paths().stream()
                .flatMap(List::stream)
                .filter(PathStep.Fuse.class::isInstance)
                .map(step -> ((PathStep.Fuse) step).id())
                .map(ElementId::toString)
                .forEach(names::add);
        return fitting.stock().wired().network().parts().stream()
                .filter(Fuse.class::isInstance)
                .map(Part::id)
                .filter(fuse -> names.contains(fitting.stock()
                        .wired()
                        .words(fuse)
                        .arguments()
                        .getFirst()
                        .toString()))
                .toList();
    }
}
