package org.loomproof.workshop.weigh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Phrase;

/**
 * Has candidates proven in the planner's order and picks the best. It stops as soon as a plan is proven that no candidate left
 * can beat: nothing broken, nothing open but what waits for a reading, and none of the rest turns down or holds less or has
 * fewer parts.
 */
public final class Weigher {

    /** More candidates than this are not proven. */
    public static final int MOST_WEIGHED = 24;

    private final BiFunction<Brief, Plan, Proof> prover;

    /** Weighs with the prover. */
    public Weigher() {
        this(Prover::prove);
    }

    Weigher(BiFunction<Brief, Plan, Proof> prover) {
        this.prover = prover;
    }

    private record Weighed(Plan plan, Proof proof, Score score) {}

    /** The best plan for a brief, with its proof and the reasons why others lost. */
    public PlannedJob weigh(Brief brief) {
        PlannedJob best = weigh(brief, Planner.plan(brief));
        return firstBroken(best).isPresent() ? withoutWhatBreaks(brief, best) : best;
    }

    private static Optional<ClaimResult> firstBroken(PlannedJob job) {
        return job.proof().results().stream()
                .filter(r -> r.verdict() instanceof Verdict.Broken)
                .findFirst();
    }

    private static long countBroken(PlannedJob job) {
        return job.proof().results().stream()
                .filter(r -> r.verdict() instanceof Verdict.Broken)
                .count();
    }

    /**
     * Turns down one wish after another, each time the one whose absence leaves the fewest claims broken, until nothing is.
     * Where that helps nothing the broken plan stands, with its witnesses.
     */
    private PlannedJob withoutWhatBreaks(Brief brief, PlannedJob broken) {
        Set<Wish> refused = EnumSet.noneOf(Wish.class);
        PlannedJob left = broken;
        while (firstBroken(left).isPresent()) {
            PlannedJob before = left;
            ClaimResult because = firstBroken(before).orElseThrow();
            Optional<PlannedJob> better = brief.order().wishes().stream()
                    .sorted()
                    .filter(wish -> wish != Wish.BASICS && !refused.contains(wish) && isServed(before.plan(), wish))
                    .map(wish -> without(brief, refused, wish, before, because))
                    .filter(job -> countBroken(job) < countBroken(before))
                    .min(Comparator.comparingLong(Weigher::countBroken));
            if (better.isEmpty()) {
                return broken;
            }
            left = better.get();
            left.plan().refusals().forEach(refusal -> refused.add(refusal.wish()));
        }
        return left;
    }

    private static boolean isServed(Plan plan, Wish wish) {
        return plan.hookups().stream().anyMatch(h -> h instanceof Hookup.Connect c && c.serves() == wish);
    }

    private PlannedJob without(Brief brief, Set<Wish> refused, Wish wish, PlannedJob before, ClaimResult because) {
        Set<Wish> all = EnumSet.of(wish);
        all.addAll(refused);
        Brief rest = TurnedDown.without(brief, all);
        PlannedJob job = weigh(rest, Planner.plan(rest));
        Plan told = TurnedDown.tell(job.plan(), before.plan(), wish, because);
        List<Refusal> refusals = new ArrayList<>(told.refusals());
        before.plan().refusals().stream()
                .filter(r -> refused.contains(r.wish()) && !refusals.contains(r))
                .forEach(refusals::add);
        Plan plan = told.withRefusals(refusals);
        return new PlannedJob(
                plan, prover.apply(brief, plan), before.candidatesWeighed() + job.candidatesWeighed(), job.bounds());
    }

    PlannedJob weigh(Brief brief, Candidates candidates) {
        List<Weighed> weighed = new ArrayList<>();
        List<Plan> left = new ArrayList<>(candidates.plans());
        Weighed best = take(brief, left.removeFirst(), weighed);
        while (!left.isEmpty() && weighed.size() < MOST_WEIGHED) {
            Weighed toBeat = best;
            // A plan that waits for the same readings can at best leave the same claims open.
            if (Score.isProvenAsFarAsItGoes(best.plan(), best.proof())) {
                left.removeIf(plan ->
                        Score.atBest(plan, toBeat.plan(), toBeat.proof()).compareTo(toBeat.score()) >= 0);
                if (left.isEmpty()) {
                    break;
                }
            }
            Weighed next = take(brief, left.removeFirst(), weighed);
            if (next.score().compareTo(best.score()) < 0) {
                best = next;
            }
        }
        List<Phrase> bounds = new ArrayList<>(candidates.bounds());
        if (!left.isEmpty()) {
            bounds.add(Phrase.of("bound.weighed", weighed.size(), weighed.size() + left.size()));
        }
        Plan winner = best.plan();
        for (Weighed other : weighed) {
            if (!other.equals(best)) {
                winner = Losers.tell(winner, other.plan(), other.proof(), Losers.isWorse(other.score(), best.score()));
            }
        }
        return new PlannedJob(winner, best.proof(), weighed.size(), bounds);
    }

    private Weighed take(Brief brief, Plan plan, List<Weighed> weighed) {
        Proof proof = prover.apply(brief, plan);
        Weighed result = new Weighed(plan, proof, Score.of(plan, proof));
        weighed.add(result);
        return result;
    }
}
