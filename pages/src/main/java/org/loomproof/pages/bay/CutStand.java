package org.loomproof.pages.bay;

import java.util.List;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.words.Phrase;

/**
 * How far a cut has come.
 *
 * @param lacks what stands against it: nothing when it may be made
 * @param seen evidence that somebody noted beside the readings
 * @param isCut whether it was made
 * @param ends the two ends, the one towards the switch first
 */
public record CutStand(List<Phrase> lacks, List<String> seen, boolean isCut, List<End> ends) {

    /**
     * One loose end.
     *
     * @param word {@code before-cut} or {@code after-cut}
     * @param name in words
     * @param joins the added wires that are joined there
     * @param rows what a meter must show there, as far as the other end shows something else
     * @param isProven whether it was proven to be that end
     */
    public record End(String word, Phrase name, List<Join> joins, List<MeterRow> rows, boolean isProven) {
        public End {
            joins = List.copyOf(joins);
            rows = List.copyOf(rows);
        }
    }

    /**
     * An added wire at a loose end.
     *
     * @param wire which
     * @param to where it goes
     */
    public record Join(WireId wire, org.loomproof.workshop.plan.End to) {}

    public CutStand {
        lacks = List.copyOf(lacks);
        seen = List.copyOf(seen);
        ends = List.copyOf(ends);
    }

    /** True when it may be made. */
    public boolean mayBeCut() {
        return lacks.isEmpty();
    }

    /** True when both ends were proven. */
    public boolean isProven() {
        return isCut && ends.stream().allMatch(End::isProven);
    }
}
