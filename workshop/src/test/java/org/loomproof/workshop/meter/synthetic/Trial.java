package org.loomproof.workshop.meter.synthetic;

import java.util.List;
import java.util.OptionalInt;
import org.loomproof.workshop.meter.role.WireRole;

/**
 * How one made-up wire was identified.
 *
 * @param role what it is
 * @param onSheet whether a sheet had an entry for it
 * @param advised with the tests that were proposed
 * @param fixed with the tests in the order of the list
 * @param shuffled with some readings in any order and number
 * @param fewest the least number of its readings that makes anyone certain; empty where nobody looked
 * @param proposed how many tests were proposed
 * @param hurts proposed tests that could hurt such a wire
 */
record Trial(
        WireRole role,
        boolean onSheet,
        Answer advised,
        Answer fixed,
        Answer shuffled,
        OptionalInt fewest,
        int proposed,
        List<String> hurts) {

    /** What counts as certain: what a lead may be joined at, at the usual costs. */
    static final double CERTAIN = 0.9;

    /**
     * What was said in the end.
     *
     * @param sure the probability of the likeliest role
     * @param isRight whether it is the right one
     * @param tests how many were made
     * @param seconds how long they took
     */
    record Answer(double sure, boolean isRight, int tests, double seconds) {

        boolean isCertain() {
            return sure >= CERTAIN;
        }
    }
}
