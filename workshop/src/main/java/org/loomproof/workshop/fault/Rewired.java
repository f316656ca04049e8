package org.loomproof.workshop.fault;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;

/** A plan with the ends of its wires put elsewhere. */
final class Rewired {

    private Rewired() {}

    /** Every end put where {@code moved} says. */
    static Plan ends(Plan plan, UnaryOperator<End> moved) {
        return ends(plan, moved, wire -> true);
    }

    /** The wires of two terminals of a part exchanged. */
    static Plan swapped(Plan plan, AddedPartId part, String one, String other) {
        return swapped(plan, part, one, other, wire -> true);
    }

    /** Those of the wires of two terminals that are not left where they are. */
    static Plan swapped(Plan plan, AddedPartId part, String one, String other, Predicate<AddedWire> which) {
        UnaryOperator<End> swap = end -> {
            if (end instanceof End.OfPart(AddedPartId id, String terminal) && id.equals(part)) {
                return new End.OfPart(id, terminal.equals(one) ? other : terminal.equals(other) ? one : terminal);
            }
            return end;
        };
        return ends(plan, swap, which);
    }

    private static Plan ends(Plan plan, UnaryOperator<End> moved, Predicate<AddedWire> which) {
        List<AddedWire> wires = plan.wires().stream()
                .map(w -> which.test(w)
                        ? new AddedWire(w.id(), moved.apply(w.from()), moved.apply(w.to()), w.length(), w.size())
                        : w)
                .toList();
        return plan.withWires(wires);
    }
}
