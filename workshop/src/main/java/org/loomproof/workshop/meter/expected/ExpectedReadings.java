package org.loomproof.workshop.meter.expected;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.wiring.Situation;

/** Computes what a meter must show at every circuit that a plan joins anything to. */
public final class ExpectedReadings {

    private final Brief brief;
    private final Sheet sheet;
    private final Tries tries;
    private final Set<CircuitId> cut;
    private final Map<Touch, MeteredWire> wires = new HashMap<>();
    private final Map<CircuitId, Map<Situation, Optional<ExpectedReading>>> known = new HashMap<>();

    private ExpectedReadings(Brief brief, Plan plan) {
        this.brief = brief;
        this.sheet = brief.sheet();
        this.tries = new Tries(sheet);
        this.cut = JoinedCircuits.cut(plan);
    }

    /** The circuits in the plan's order. The sheet must be complete. */
    public static List<CircuitReadings> of(Brief brief, Plan plan) {
        ExpectedReadings readings = new ExpectedReadings(brief, plan);
        return joined(plan).stream().map(readings::circuit).toList();
    }

    private static Set<CircuitId> joined(Plan plan) {
        Set<CircuitId> circuits = new LinkedHashSet<>();
        for (AddedWire wire : plan.wires()) {
            for (End end : List.of(wire.from(), wire.to())) {
                switch (end) {
                    case End.Tap(var circuit) -> circuits.add(circuit);
                    case End.CutBefore(var circuit) -> circuits.add(circuit);
                    case End.CutAfter(var circuit) -> circuits.add(circuit);
                    case End.OfLead lead -> {}
                    case End.OfPart part -> {}
                    case End.Body body -> {}
                }
            }
        }
        return circuits;
    }

    private CircuitReadings circuit(CircuitId id) {
        Circuit circuit = sheet.circuit(id);
        if (!Tries.mayBeMeasured(circuit)) {
            return new CircuitReadings(id, List.of(), List.of(), List.of());
        }
        List<Situation> situations = tries.of(circuit);
        List<ExpectedReading> ends = new ArrayList<>();
        if (cut.contains(id)) {
            ends.addAll(readings(new Touch(id, Touch.End.BEFORE_CUT), situations));
            ends.addAll(readings(new Touch(id, Touch.End.AFTER_CUT), situations));
        }
        List<ExpectedReading> whole =
                situations.stream().flatMap(s -> reading(id, s).stream()).toList();
        return new CircuitReadings(id, whole, ends, alike(id, situations));
    }

    private List<ExpectedReading> readings(Touch touch, List<Situation> situations) {
        MeteredWire wire = new MeteredWire(sheet, brief.kit().behaviour(), touch);
        return situations.stream().flatMap(s -> wire.reading(s).stream()).toList();
    }

    private Optional<ExpectedReading> reading(CircuitId id, Situation when) {
        return known.computeIfAbsent(id, c -> new LinkedHashMap<>())
                .computeIfAbsent(
                        when,
                        s -> wires.computeIfAbsent(
                                        new Touch(id, Touch.End.WHOLE),
                                        touch -> new MeteredWire(
                                                sheet, brief.kit().behaviour(), touch))
                                .reading(s));
    }

    /** Other wires that may show the same in all of the wire's own situations. */
    private List<LookAlike> alike(CircuitId id, List<Situation> situations) {
        List<LookAlike> found = new ArrayList<>();
        for (Circuit other : sheet.circuits()) {
            if (!other.id().equals(id)
                    && Tries.mayBeMeasured(other)
                    && situations.stream().allMatch(s -> mayLookAlike(id, other.id(), s))) {
                Optional<Situation> split = tries.of(other).stream()
                        .filter(s -> !mayLookAlike(id, other.id(), s))
                        .findFirst();
                found.add(new LookAlike(other.id(), split.flatMap(s -> reading(id, s))));
            }
        }
        return found;
    }

    /** What has no reading of its own may show anything. */
    private boolean mayLookAlike(CircuitId one, CircuitId other, Situation when) {
        Optional<ExpectedReading> here = reading(one, when);
        Optional<ExpectedReading> there = reading(other, when);
        return here.isEmpty() || there.isEmpty() || here.get().looksLike(there.get());
    }
}
