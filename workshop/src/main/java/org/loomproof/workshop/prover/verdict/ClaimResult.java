package org.loomproof.workshop.prover.verdict;

import java.util.List;
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

    /** True for one that is broken and that another plan may meet. */
    public boolean countsAsBroken() {
        return planDecides && verdict instanceof Verdict.Broken;
    }
}
