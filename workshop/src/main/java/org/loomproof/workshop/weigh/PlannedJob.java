package org.loomproof.workshop.weigh;

import java.util.List;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.words.Phrase;

/**
 * A plan that was picked, with its proof.
 *
 * @param plan what happens to every lead
 * @param proof what was proven of it
 * @param search how much was looked through before this one was picked
 * @param bounds what was left out of the search, in words; empty when nothing was
 */
public record PlannedJob(Plan plan, Proof proof, Search search, List<Phrase> bounds) {

    public PlannedJob {
        bounds = List.copyOf(bounds);
    }
}
