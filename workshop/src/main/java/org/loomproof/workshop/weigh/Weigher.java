package org.loomproof.workshop.weigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.words.Phrase;

/**
 * Has candidates proven in the planner's order and picks the best. It stops as soon as a plan is proven that no candidate left
 * can beat: nothing broken, nothing open but what waits for a reading, and none of the rest turns down or holds less or has
 * fewer parts. A candidate is proven only until it has lost.
 */
public final class Weigher {

    /** More candidates than this are not proven. */
    public static final int MOST_WEIGHED = 24;

    /** A plan has lost as soon as anything is broken. */
    private static final int NOTHING_BROKEN = 0;

    /** What proves a plan as long as it may still win. */
    @FunctionalInterface
    interface Proving {
        /** The proof of a plan that has lost once more than so many claims are broken. */
        Proof prove(Brief brief, Plan plan, int mostBroken);
    }

    private final Proving prover;

    /** Weighs with the prover. */
    public Weigher() {
        this(Prover::proveUntilLost);
    }

    /**
     * Weighs with the prover, for somebody who watches or may lose patience.
     *
     * @param beforeEachProof is called before each candidate is proven; what it throws ends the weighing
     */
    public Weigher(Runnable beforeEachProof) {
        this((brief, plan, mostBroken) -> {
            beforeEachProof.run();
            return Prover.proveUntilLost(brief, plan, mostBroken);
        });
    }

    Weigher(Proving prover) {
        this.prover = prover;
    }

    private record Weighed(Plan plan, Proof proof, Score score) {}

    /** The best plan for a brief, with its proof and the reasons why others lost. */
    public PlannedJob weigh(Brief brief) {
        PlannedJob best = weigh(brief, Planner.plan(brief));
        return listBroken(best).isEmpty() ? best : withoutWhatBreaks(brief, best);
    }

    /** What is broken and may not be in another plan. */
    private static List<ClaimResult> listBroken(PlannedJob job) {
        return job.proof().results().stream()
                .filter(ClaimResult::countsAsBroken)
                .toList();
    }

    /**
     * Turns down one wish after another, each time the one whose absence leaves the fewest claims broken, until nothing is.
     * Where that helps nothing the broken plan stands, with its witnesses.
     */
    private PlannedJob withoutWhatBreaks(Brief brief, PlannedJob broken) {
        TurnedDown down = TurnedDown.nothing(broken.plan());
        PlannedJob left = broken;
        while (!listBroken(left).isEmpty()) {
            List<ClaimResult> breaks = listBroken(left);
            Optional<Rest> better = Optional.empty();
            for (Wish wish : down.listFurther(brief.order())) {
                Rest rest = without(brief, down.and(wish, breaks.getFirst()));
                if (rest.broken() < better.map(Rest::broken).orElse(breaks.size())) {
                    better = Optional.of(rest);
                }
            }
            if (better.isEmpty()) {
                return broken;
            }
            down = better.get().down();
            left = better.get().job();
        }
        return left;
    }

    private record Rest(TurnedDown down, PlannedJob job, int broken) {}

    /** What is left of a job without the wishes turned down. */
    private Rest without(Brief brief, TurnedDown down) {
        Brief asked = down.without(brief);
        PlannedJob rest = weigh(asked, Planner.plan(asked));
        Plan plan = down.tell(rest.plan());
        PlannedJob job =
                new PlannedJob(plan, prover.prove(brief, plan, Integer.MAX_VALUE), rest.search(), rest.bounds());
        return new Rest(down, job, listBroken(job).size());
    }

    PlannedJob weigh(Brief brief, Candidates candidates) {
        List<Weighed> weighed = new ArrayList<>();
        List<Plan> left = new ArrayList<>(candidates.plans());
        Weighed best = take(brief, left.removeFirst(), weighed, NOTHING_BROKEN);
        // Where one breaks nothing the others need no more than what breaks first; where none does, which breaks least
        // must be found out.
        while (best.score().broken() > 0 && !left.isEmpty() && weighed.size() < MOST_WEIGHED) {
            best = take(brief, left.removeFirst(), weighed, NOTHING_BROKEN);
        }
        long solvedBefore = 0;
        if (best.score().broken() > 0) {
            left = new ArrayList<>(candidates.plans());
            solvedBefore = solves(weighed);
            weighed.clear();
            best = take(brief, left.removeFirst(), weighed, Integer.MAX_VALUE);
        }
        while (!left.isEmpty() && weighed.size() < MOST_WEIGHED) {
            Weighed toBeat = best;
            // A plan that waits for the same readings can at best leave the same claims open.
            if (Score.isProvenAsFarAsItGoes(best.plan(), best.proof())) {
                left.removeIf(plan ->
                        Score.atBest(brief, plan, toBeat.plan(), toBeat.proof()).compareTo(toBeat.score()) >= 0);
                if (left.isEmpty()) {
                    break;
                }
            }
            Weighed next = take(brief, left.removeFirst(), weighed, best.score().broken());
            if (next.score().compareTo(best.score()) < 0) {
                best = next;
            }
        }
        List<Phrase> bounds = new ArrayList<>(candidates.bounds());
        if (!left.isEmpty()) {
            bounds.add(Phrase.of("bound.weighed", weighed.size(), weighed.size() + left.size()));
        }
        best = shared(brief, best, candidates.sharing(), weighed);
        Plan winner = best.plan();
        for (Weighed other : weighed) {
            if (!other.equals(best)) {
                winner = Losers.tell(winner, other.plan(), other.proof(), Losers.isWorse(other.score(), best.score()));
            }
        }
        return new PlannedJob(
                winner,
                best.proof(),
                new Search(weighed.size(), solvedBefore + solves(weighed), candidates.searches()),
                bounds);
    }

    /** The same with one part for several as long as the proof allows: everything that may be shared at once, or else one by one. */
    private Weighed shared(Brief brief, Weighed found, Candidates.Sharer sharing, List<Weighed> weighed) {
        Weighed best = found;
        boolean better = Score.isProvenAsFarAsItGoes(best.plan(), best.proof());
        while (better) {
            better = false;
            for (Plan fewer : sharing.share(best.plan())) {
                Weighed next = take(brief, fewer, weighed, best.score().broken());
                if (next.score().compareTo(best.score()) < 0) {
                    best = next;
                    better = true;
                    break;
                }
            }
        }
        return best;
    }

    private static long solves(List<Weighed> weighed) {
        return weighed.stream()
                .mapToLong(each -> each.proof().effort().solves())
                .sum();
    }

    private Weighed take(Brief brief, Plan plan, List<Weighed> weighed, int mostBroken) {
        Proof proof = prover.prove(brief, plan, mostBroken);
        Weighed result = new Weighed(plan, proof, Score.of(brief, plan, proof));
        weighed.add(result);
        return result;
    }
}
