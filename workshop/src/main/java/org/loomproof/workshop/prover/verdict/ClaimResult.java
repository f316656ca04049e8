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
 */
public record ClaimResult(String id, Phrase statement, Verdict verdict, List<Assumption> restsOn) {

    public ClaimResult {
        restsOn = List.copyOf(restsOn);
    }
}
