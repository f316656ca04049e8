package org.loomproof.workshop.plan;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.brief.sheet.CircuitId;

/** The factory circuits that a plan joins, in the order of its wires. */
public final class JoinedCircuits {

    private JoinedCircuits() {}

    /** Those that are cut: at whose loose ends an added wire ends. */
    public static Set<CircuitId> cut(Plan plan) {
        return ends(plan, end -> switch (end) {
            case End.CutBefore(CircuitId circuit) -> circuit;
            case End.CutAfter(CircuitId circuit) -> circuit;
            case End.OfLead lead -> null;
            case End.OfPart part -> null;
            case End.Tap tap -> null;
            case End.Body body -> null;
        });
    }

    /** Those that are tapped: on whose whole wire an added wire ends. */
    public static Set<CircuitId> tapped(Plan plan) {
        return ends(plan, end -> end instanceof End.Tap(CircuitId circuit) ? circuit : null);
    }

    private static Set<CircuitId> ends(Plan plan, Function<End, @Nullable CircuitId> joined) {
        Set<CircuitId> circuits = new LinkedHashSet<>();
        for (AddedWire wire : plan.wires()) {
            for (End end : List.of(wire.from(), wire.to())) {
                CircuitId circuit = joined.apply(end);
                if (circuit != null) {
                    circuits.add(circuit);
                }
            }
        }
        return circuits;
    }
}
