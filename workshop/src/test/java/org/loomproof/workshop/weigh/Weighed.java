package org.loomproof.workshop.weigh;

import static org.assertj.core.api.Assertions.assertThat;

import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.prover.ProofText;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Verdict;

/** What is asked of whatever was picked. */
final class Weighed {

    private Weighed() {}

    /** What is picked for a brief, of which no claim is broken and nothing better is missed where anything is picked. */
    static PlannedJob best(Object about, Brief brief) {
        Candidates candidates = Planner.plan(brief);
        PlannedJob picked = new Weigher().weigh(brief);
        nothingIsBroken(about, picked);
        if (picked.plan().refusals().isEmpty()) {
            nothingBetterIsMissed(brief, candidates, picked);
        }
        return picked;
    }

    /** No claim is broken; {@code about} says of what. */
    static void nothingIsBroken(Object about, PlannedJob picked) {
        assertThat(picked.proof().results())
                .as(about + "\n" + ProofText.notHolding(picked.proof()))
                .noneMatch(result -> result.verdict() instanceof Verdict.Broken);
    }

    /** The weigher stops early; proving every candidate finds nothing that ranks before what it picked. */
    static void nothingBetterIsMissed(Brief brief, Candidates candidates, PlannedJob picked) {
        Score score = Score.of(brief, picked.plan(), picked.proof());
        assertThat(candidates.bounds()).isEmpty();
        assertThat(candidates.plans())
                .allSatisfy(plan -> assertThat(Score.of(brief, plan, Prover.prove(brief, plan)))
                        .isGreaterThanOrEqualTo(score));
    }
}
