package org.loomproof.workshop.weigh;

import java.util.Comparator;
import java.util.List;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;

/**
 * How good a proven plan is; the least is the best. Broken claims count first, then refusals, then leads on hold and open
 * claims, then parts, then joints.
 *
 * @param broken claims that are broken
 * @param refused wishes that are turned down
 * @param held leads on hold
 * @param open claims that are not decided
 * @param parts added parts
 * @param joints ends of added wires
 */
record Score(int broken, int refused, int held, int open, int parts, int joints) implements Comparable<Score> {

    private static final Comparator<Score> ORDER = Comparator.comparingInt(Score::broken)
            .thenComparingInt(Score::refused)
            .thenComparingInt(Score::held)
            .thenComparingInt(Score::open)
            .thenComparingInt(Score::parts)
            .thenComparingInt(Score::joints);

    static Score of(Plan plan, Proof proof) {
        int broken = 0;
        int open = 0;
        for (ClaimResult result : proof.results()) {
            switch (result.verdict()) {
                case Verdict.Broken b -> broken++;
                case Verdict.Open o -> open++;
                case Verdict.Holds h -> {}
            }
        }
        int held = (int)
                plan.hookups().stream().filter(Hookup.Hold.class::isInstance).count();
        return new Score(
                broken,
                plan.refusals().size(),
                held,
                open,
                plan.parts().size(),
                2 * plan.wires().size());
    }

    /** The best that a plan can score before it is proven. */
    static Score atBest(Plan plan) {
        return of(plan, new Proof(List.of(), new Proof.Effort(0, 0, 0), List.of()));
    }

    /** True when nothing is broken and nothing open, so that only a simpler plan could be better. */
    boolean isProven() {
        return broken == 0 && open == 0;
    }

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }
}
