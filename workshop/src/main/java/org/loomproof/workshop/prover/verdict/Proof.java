package org.loomproof.workshop.prover.verdict;

import java.util.List;
import org.loomproof.workshop.words.Phrase;

/**
 * The whole proof of a plan.
 *
 * @param results claim by claim, in a fixed order
 * @param effort what was looked at
 * @param bounds every limit that was put on the search, in words; empty when none
 */
public record Proof(List<ClaimResult> results, Effort effort, List<Phrase> bounds) {

    public Proof {
        results = List.copyOf(results);
        bounds = List.copyOf(bounds);
    }

    /** How much was looked at: situations, operating points solved, corners of the assumed ranges. */
    public record Effort(long situations, long solves, long corners) {}
}
