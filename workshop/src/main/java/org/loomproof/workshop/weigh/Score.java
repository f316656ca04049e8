package org.loomproof.workshop.weigh;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
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
 * @param parts added parts, a pin switch for three
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
                plan.parts().stream().mapToInt(Score::weight).sum(),
                2 * plan.wires().size());
    }

    /** A pin switch wants a bracket, a hole and a setting to the lid: the work of three parts. Common practice. */
    private static int weight(AddedPart part) {
        return part instanceof AddedPart.PinSwitch ? 3 : 1;
    }

    /**
     * The best that a plan can score, judged before it is proven by another that was: leads that wait for the same readings
     * leave the same claims open.
     */
    static Score atBest(Plan plan, Plan proven, Proof proof) {
        Score blank = of(plan, new Proof(List.of(), proof.effort(), List.of()));
        int open = holds(plan).equals(holds(proven)) ? openByHolds(proven, proof) : 0;
        return new Score(0, blank.refused(), blank.held(), open, blank.parts(), blank.joints());
    }

    /** True when nothing is broken, and nothing open but what waits for the readings of held leads. */
    static boolean isProvenAsFarAsItGoes(Plan plan, Proof proof) {
        Score score = of(plan, proof);
        return score.broken() == 0 && score.open() == openByHolds(plan, proof);
    }

    private static Set<Hookup> holds(Plan plan) {
        return plan.hookups().stream().filter(Hookup.Hold.class::isInstance).collect(Collectors.toUnmodifiableSet());
    }

    private static int openByHolds(Plan plan, Proof proof) {
        Set<Measurement> awaited = holds(plan).stream()
                .flatMap(h -> h instanceof Hookup.Hold hold ? Stream.of(hold.until()) : Stream.empty())
                .collect(Collectors.toUnmodifiableSet());
        return (int) proof.results().stream()
                .filter(r -> r.verdict() instanceof Verdict.Open open
                        && !open.settledBy().isEmpty()
                        && awaited.containsAll(open.settledBy()))
                .count();
    }

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }
}
