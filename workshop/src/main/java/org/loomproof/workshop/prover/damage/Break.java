package org.loomproof.workshop.prover.damage;

import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.words.Phrase;

/**
 * A case that a damage breaks.
 *
 * @param claim the id of the case
 * @param statement what was claimed, in words
 * @param severity what it comes to, at its worst
 * @param worst how far outside it is at the worst
 * @param witness the fewest steps that show it
 * @param takesEnds whether it is broken only in a cold or a hot car, with figures at the ends of their ranges, or at volts between
 *     two supply points
 * @param isSure whether it is broken there and everywhere else as well; asked only of what a test sees by nothing else
 */
public record Break(
        String claim,
        Phrase statement,
        Severity severity,
        Margin worst,
        Witness witness,
        boolean takesEnds,
        boolean isSure) {

    /** Two findings about one case: the worse of them, and the witness that takes the least. */
    Break or(Break other) {
        Break shown = takesEnds && !other.takesEnds ? other : this;
        Margin worse = other.worst.slack() < worst.slack() ? other.worst : worst;
        return new Break(
                claim,
                statement,
                severity.or(other.severity),
                worse,
                shown.witness,
                shown.takesEnds,
                isSure || other.isSure);
    }

    /** The same where it is not broken everywhere. */
    Break unsure() {
        return new Break(claim, statement, severity, worst, witness, takesEnds, false);
    }
}
