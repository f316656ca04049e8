package org.loomproof.workshop.planner.cut;

import java.util.List;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.quantity.SquareMillimetres;

/** What a wire with contacts in it leads to, at either end. */
public sealed interface WireEnd {

    /**
     * One side of a factory wire that is cut.
     *
     * @param end the side
     * @param size of the wire, which stubs lengthen
     */
    record Cut(End end, SquareMillimetres size) implements WireEnd {}

    /** A pole for good: the body, or the fused supply. */
    record Pole(Side side) implements WireEnd {}

    /**
     * Loads out of the box, by that terminal of each, wired from one to the next.
     *
     * @param items from the nearest on
     * @param terminal of each of them
     */
    record Loads(List<AddedLoad.Item> items, String terminal) implements WireEnd {
        public Loads {
            items = List.copyOf(items);
        }
    }
}
