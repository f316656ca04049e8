package org.loomproof.workshop.prover;

import java.util.List;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.verdict.Severity;

/**
 * Two mishaps at once: where one hides the other.
 *
 * @param passing pairs in which nothing is sure to be seen in the whole test order, though some test notices at least one of the
 *     two alone; the worst first
 * @param hidden pairs in which one hides the other, while the order still shows that something is wrong: the other comes to
 *     light when the order is gone through again after the first was mended
 * @param apart pairs that touch no common part of the network, so that neither can hide the other
 * @param lookedAt pairs whose tests were gone through
 * @param left pairs that were not looked at because the search was stopped
 */
public record MaskedPairs(List<Masked> passing, int hidden, int apart, int lookedAt, int left) {

    public MaskedPairs {
        passing = List.copyOf(passing);
    }

    /** Those that do harm together. */
    public List<Masked> harmful() {
        return passing.stream().filter(pair -> pair.severity() != Severity.NONE).toList();
    }

    /**
     * Two mishaps that together pass the test order.
     *
     * @param one some test notices it where it is alone
     * @param other what hides it
     * @param severity how bad the two are together; none where together they change nothing that is claimed
     * @param breaks the claims that no longer hold with both there, the worst first
     * @param isRestless whether in some test contacts come to no rest: something may well be seen or heard, and nothing is sure
     */
    public record Masked(Mishap one, Mishap other, Severity severity, List<Break> breaks, boolean isRestless) {
        public Masked {
            breaks = List.copyOf(breaks);
        }
    }
}
