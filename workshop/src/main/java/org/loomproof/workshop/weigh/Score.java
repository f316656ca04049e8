package org.loomproof.workshop.weigh;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.price.Labour;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;

/**
 * How good a proven plan is; the least is the best. Broken claims count first, then refusals, then leads on hold and open
 * claims, then changes that the customer must sign for, then claims that hold tightly, then parts, then joints, then minutes of work.
 *
 * @param broken claims that are broken and that a plan decides
 * @param refused wishes that are turned down
 * @param held leads on hold
 * @param open claims that are not decided, likewise
 * @param declared claims that only hold with a declared change
 * @param tight claims about leads and their parts that hold tightly
 * @param parts added parts, a pin switch or a buffer for three
 * @param joints ends of added wires
 * @param minutes of work, by the usual times
 */
record Score(
        int broken, int refused, int held, int open, int declared, int tight, int parts, int joints, BigDecimal minutes)
        implements Comparable<Score> {

    private static final Comparator<Score> ORDER = Comparator.comparingInt(Score::broken)
            .thenComparingInt(Score::refused)
            .thenComparingInt(Score::held)
            .thenComparingInt(Score::open)
            .thenComparingInt(Score::declared)
            .thenComparingInt(Score::tight)
            .thenComparingInt(Score::parts)
            .thenComparingInt(Score::joints)
            .thenComparing(Score::minutes);

    static Score of(Brief brief, Plan plan, Proof proof) {
        int held = (int)
                plan.hookups().stream().filter(Hookup.Hold.class::isInstance).count();
        return new Score(
                count(proof, Verdict.Broken.class),
                plan.refusals().size(),
                held,
                count(proof, Verdict.Open.class),
                count(proof, Verdict.Declared.class),
                Tightness.count(plan, proof),
                plan.parts().stream().mapToInt(Score::weight).sum(),
                2 * plan.wires().size(),
                Labour.of(brief, plan, Map.of()).minutes());
    }

    /**
     * A pin switch wants a bracket, a hole and a setting to the lid, a module a place, a feed and a ground of its own: the work
     * of three parts. Common practice.
     */
    private static int weight(AddedPart part) {
        return part instanceof AddedPart.PinSwitch || part instanceof AddedPart.Buffer ? 3 : 1;
    }

    /**
     * The best that a plan can score, judged before it is proven by another that was: leads that wait for the same readings
     * leave the same claims open, and leads that are decided alike hold what they hold as tightly.
     */
    static Score atBest(Brief brief, Plan plan, Plan proven, Proof proof) {
        Score blank = of(brief, plan, new Proof(List.of(), proof.effort(), List.of()));
        int open = holds(plan).equals(holds(proven)) ? openByHolds(proven, proof) : 0;
        int tight = Tightness.countKept(proven, proof, plan);
        return new Score(
                0, blank.refused(), blank.held(), open, 0, tight, blank.parts(), blank.joints(), blank.minutes());
    }

    /** True when nothing is broken, and nothing open but what waits for the readings of held leads. */
    static boolean isProvenAsFarAsItGoes(Plan plan, Proof proof) {
        long broken = count(proof, Verdict.Broken.class);
        return broken == 0 && count(proof, Verdict.Open.class) == openByHolds(plan, proof);
    }

    private static int count(Proof proof, Class<? extends Verdict> kind) {
        return (int) proof.results().stream()
                .filter(ClaimResult::planDecides)
                .filter(result -> kind.isInstance(result.verdict()))
                .count();
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
