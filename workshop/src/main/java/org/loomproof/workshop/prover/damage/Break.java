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
 */
public record Break(String claim, Phrase statement, Severity severity, Margin worst, Witness witness) {}
