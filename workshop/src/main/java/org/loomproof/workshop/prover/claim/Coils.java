package org.loomproof.workshop.prover.claim;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.SelectorSwitch;
import org.loomproof.network.part.SteppedSwitch;
import org.loomproof.network.part.Suppressor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;

/** Finds the coils that an output may hold: those with an end that wires, contacts and diodes lead to from its lead. */
final class Coils {

    private Coils() {}

    /** The coils, in the order of the network's parts. */
    static List<PartId> drivenFrom(Fitting fitting, LeadId lead) {
        Wired wired = fitting.fitted().wired();
        Set<PartId> windings = loads(fitting, Coils::isWound);
        Set<Node> reached = reachedFrom(wired, lead);
        List<PartId> coils = new ArrayList<>();
        for (Part part : wired.network().parts()) {
            boolean isCoil = part instanceof Relay || windings.contains(part.id());
            if (isCoil
                    && (reached.contains(part.pins().get(0).node())
                            || reached.contains(part.pins().get(1).node()))) {
                coils.add(part.id());
            }
        }
        return coils;
    }

    /** What to call a coil in an id: the reader's own name for it. */
    static String name(Fitting fitting, PartId coil) {
        Wired wired = fitting.fitted().wired();
        return wired.words(coil).arguments().getFirst().toString();
    }

    /** The motors among the factory loads. */
    static Set<PartId> motors(Fitting fitting) {
        return loads(fitting, kind -> kind == PathStep.LoadKind.MOTOR);
    }

    /** Whether wires, contacts and diodes lead from the lead to one of these. */
    static boolean reaches(Fitting fitting, LeadId lead, Set<PartId> any) {
        Wired wired = fitting.fitted().wired();
        Set<Node> reached = reachedFrom(wired, lead);
        return any.stream()
                .flatMap(part -> wired.network().part(part).pins().stream())
                .anyMatch(pin -> reached.contains(pin.node()));
    }

    private static Set<PartId> loads(Fitting fitting, Predicate<PathStep.LoadKind> of) {
        Set<PartId> loads = new HashSet<>();
        for (Circuit circuit : fitting.brief().sheet().circuits()) {
            for (List<PathStep> path : circuit.paths()) {
                for (PathStep step : path) {
                    if (step instanceof PathStep.Load load && of.test(load.kind())) {
                        loads.add(Objects.requireNonNull(fitting.fitted()
                                        .wired()
                                        .factory()
                                        .loads()
                                        .get(load.id()))
                                .part());
                    }
                }
            }
        }
        return loads;
    }

    private static boolean isWound(PathStep.LoadKind kind) {
        return switch (kind) {
            case MOTOR, SOLENOID -> true;
            case HEATER, ELECTRONIC -> false;
        };
    }

    private static Set<Node> reachedFrom(Wired wired, LeadId lead) {
        ControllerParts controller = wired.controller().orElseThrow();
        Set<Node> walls = Set.of(Node.CHASSIS, wired.post(), controller.supply(), controller.ground());
        Map<Node, List<Node>> joined = new HashMap<>();
        wired.network().parts().forEach(part -> join(part, joined));
        Set<Node> reached = new HashSet<>();
        Deque<Node> toVisit = new ArrayDeque<>();
        Node start = Objects.requireNonNull(controller.leads().get(lead));
        toVisit.add(start);
        reached.add(start);
        while (!toVisit.isEmpty()) {
            for (Node next : joined.getOrDefault(toVisit.remove(), List.of())) {
                if (!walls.contains(next) && reached.add(next)) {
                    toVisit.add(next);
                }
            }
        }
        return reached;
    }

    private static void join(Part part, Map<Node, List<Node>> joined) {
        boolean conducts = switch (part) {
            case Wire w -> true;
            case Fuse f -> true;
            case Switch s -> true;
            case Diode d -> true;
            case Battery b -> false;
            case Resistor r -> false;
            case Meter m -> false;
            case Relay r -> false;
            case Lamp l -> false;
            case LowSideOutput o -> false;
            case HighSideOutput o -> false;
            case LogicInput i -> false;
            case SelectorSwitch s -> false; // none is drawn today; one that were would join more than two nodes
            case SteppedSwitch s -> false;
            case Capacitor c -> false;
            case Inductor i -> false;
            case Zener z -> false;
            case Suppressor s -> false;
            case Motor m -> false;
            case PulsedSource p -> false;
        };
        if (conducts) {
            Reach reach = Reach.across(part);
            joined.computeIfAbsent(reach.from(), n -> new ArrayList<>()).add(reach.to());
            joined.computeIfAbsent(reach.to(), n -> new ArrayList<>()).add(reach.from());
        }
    }
}
