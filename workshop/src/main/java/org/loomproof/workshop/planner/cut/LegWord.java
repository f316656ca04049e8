package org.loomproof.workshop.planner.cut;

import java.util.List;

/**
 * One coupling of a load out of the box that turns either way: its two legs are wires that nobody has to cut, since they lead to a
 * pole for good.
 *
 * @param rests what each leg leads to
 * @param word the contacts in both, and what works them
 */
public record LegWord(List<Given> rests, CutWord word) {

    public LegWord {
        rests = List.copyOf(rests);
    }
}
