package org.loomproof.shop.job;

import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;

/**
 * How many claims ended how.
 *
 * @param holds satisfied everywhere
 * @param broken not satisfied, with a witness
 * @param open not decided
 * @param declared satisfied but for a declared change, for which the customer must sign
 */
public record VerdictCounts(int holds, int broken, int open, int declared) {

    /** The counts of a proof. */
    public static VerdictCounts of(Proof proof) {
        int holds = 0;
        int broken = 0;
        int open = 0;
        int declared = 0;
        for (ClaimResult result : proof.results()) {
            switch (result.verdict()) {
                case Verdict.Holds ignored -> holds++;
                case Verdict.Broken ignored -> broken++;
                case Verdict.Open ignored -> open++;
                case Verdict.Declared ignored -> declared++;
            }
        }
        return new VerdictCounts(holds, broken, open, declared);
    }
}
