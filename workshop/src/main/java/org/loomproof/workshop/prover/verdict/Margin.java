package org.loomproof.workshop.prover.verdict;

import org.loomproof.workshop.words.Phrase;

/**
 * The distance between what was computed and what is allowed.
 *
 * @param slack positive when the claim is satisfied, in the unit of the quantity compared
 * @param unit that unit's symbol
 * @param computed what was computed, in words with its quantity
 * @param allowed what is allowed, likewise
 */
public record Margin(double slack, String unit, Phrase computed, Phrase allowed) {

    /** True when the claim is satisfied there. */
    public boolean isKept() {
        return slack >= 0;
    }
}
