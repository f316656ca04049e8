package org.loomproof.workshop.meter.comeback;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.network.part.Node;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;

/** Where the red lead of the meter goes in a finished car; the black one is on bare metal of the body. */
public sealed interface Probe {

    /** The name under which a file of readings knows it. */
    String name();

    /** Seconds to get there the first time. Common practice, no published source. */
    int seconds();

    /** A lead of the controller, at the back of its plug. */
    record AtPlug(LeadId lead) implements Probe {
        @Override
        public String name() {
            return lead.toString();
        }

        /** The controller is reached once; then its leads lie side by side. */
        @Override
        public int seconds() {
            return 30;
        }
    }

    /** A factory wire that is tapped, where the plan taps it; of a cut wire the side that the sheet lists first. */
    record AtCircuit(CircuitId circuit) implements Probe {
        @Override
        public String name() {
            return circuit.toString();
        }

        @Override
        public int seconds() {
            return PANEL_SECONDS;
        }
    }

    /** The far side of a factory wire that was cut. */
    record BehindCut(CircuitId circuit) implements Probe {
        @Override
        public String name() {
            return circuit + " after";
        }

        @Override
        public int seconds() {
            return PANEL_SECONDS;
        }
    }

    /** A terminal of an added part: a socket's contact, an end of a fuse holder, a joint of a diode. */
    record AtTerminal(AddedPartId part, String terminal) implements Probe {
        @Override
        public String name() {
            return part + " " + terminal;
        }

        /** Near the controller, but each by itself. */
        @Override
        public int seconds() {
            return 45;
        }
    }

    /** A panel comes off first. */
    int PANEL_SECONDS = 120;

    /** All places of a plan: the plug first, then the panels, in the plan's order. */
    static List<Probe> list(Brief brief, Plan plan) {
        List<Probe> probes = new ArrayList<>();
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                probes.add(new AtPlug(connect.lead()));
            }
        }
        Set<CircuitId> circuits = new LinkedHashSet<>();
        for (AddedWire wire : plan.wires()) {
            for (End end : List.of(wire.from(), wire.to())) {
                if (end instanceof End.Tap(var circuit)) {
                    circuits.add(circuit);
                }
            }
        }
        Set<CircuitId> cut = JoinedCircuits.cut(plan);
        circuits.addAll(cut);
        plan.wires().stream()
                .flatMap(wire -> Stream.of(wire.from(), wire.to()))
                .filter(End.OfPart.class::isInstance)
                .map(end -> (Probe) new AtTerminal(((End.OfPart) end).part(), ((End.OfPart) end).terminal()))
                .distinct()
                .forEach(probes::add);
        circuits.forEach(circuit -> probes.add(new AtCircuit(circuit)));
        cut.forEach(circuit -> probes.add(new BehindCut(circuit)));
        return List.copyOf(probes);
    }

    /** The node in a fitted vehicle; empty where the vehicle has none there. */
    default Optional<Node> node(Wired wired) {
        Node node = switch (this) {
            case AtPlug(LeadId lead) -> wired.controller().orElseThrow().leads().get(lead);
            case AtTerminal(AddedPartId part, String terminal) -> VehicleWiring.terminal(part, terminal);
            case AtCircuit(CircuitId circuit) -> wired.factory().before().get(circuit);
            case BehindCut(CircuitId circuit) -> wired.factory().after().get(circuit);
        };
        return Optional.ofNullable(node).filter(wired.network()::hasNode);
    }
}
