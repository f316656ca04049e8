package org.loomproof.workshop.prover.verdict;

import java.util.List;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * One claim with its verdict.
 *
 * @param id stable, such as {@code starts-when-disarmed starter}
 * @param statement the claim in words
 * @param verdict what was found
 * @param restsOn every assumption that moves its margin
 * @param planDecides false where sheet, kit and order decide alone, so that no other plan fares better
 */
public record ClaimResult(String id, Phrase statement, Verdict verdict, List<Assumption> restsOn, boolean planDecides) {

    /** A claim that another plan may meet where this one does not. */
    public ClaimResult(String id, Phrase statement, Verdict verdict, List<Assumption> restsOn) {
        this(id, statement, verdict, restsOn, true);
    }

    public ClaimResult {
        restsOn = List.copyOf(restsOn);
    }

    /** The same with another verdict. */
    public ClaimResult with(Verdict other) {
        return new ClaimResult(id, statement, other, restsOn, planDecides);
    }

    /** The same with the other verdict where that is the worse one: broken, then open, then declared, then what has less to spare. */
    public ClaimResult withWorse(Verdict other) {
        return rank(other) > rank(verdict) || (rank(other) == 0 && toSpare(other) < toSpare(verdict))
                ? with(other)
                : this;
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Holds holds -> 0;
            case Verdict.Declared declared -> 1;
            case Verdict.Open open -> 2;
            case Verdict.Broken broken -> 3;
        };
    }

    private static double toSpare(Verdict verdict) {
        return verdict instanceof Verdict.Holds(Margin tightest, Situation deciding)
                ? tightest.slack()
                : Double.NEGATIVE_INFINITY;
    }

    /** The same with another verdict, which sheet, kit and order decide alone. */
    public ClaimResult decidedWithoutPlan(Verdict other) {
        return new ClaimResult(id, statement, other, restsOn, false);
    }

    /** True for one that is broken and that another plan may meet. */
    public boolean countsAsBroken() {
        return planDecides && verdict instanceof Verdict.Broken;
    }
}
