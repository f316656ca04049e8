package org.loomproof.workshop.prover.verdict;

import java.util.List;
import java.util.stream.Stream;
import org.loomproof.workshop.words.Phrase;

/**
 * The whole proof of a plan.
 *
 * @param results claim by claim, in a fixed order
 * @param threats what a thief may try, and what comes of it
 * @param residuals what is left although every claim holds
 * @param effort what was looked at
 * @param bounds every limit that was put on the search, in words; empty when none
 */
public record Proof(
        List<ClaimResult> results,
        List<ThreatResult> threats,
        List<Residual> residuals,
        Effort effort,
        List<Phrase> bounds) {

    public Proof {
        results = List.copyOf(results);
        threats = List.copyOf(threats);
        residuals = List.copyOf(residuals);
        bounds = List.copyOf(bounds);
    }

    /** A proof of claims alone. */
    public Proof(List<ClaimResult> results, Effort effort, List<Phrase> bounds) {
        this(results, List.of(), List.of(), effort, bounds);
    }

    /** The same proof with what a thief may try, and what is left. */
    public Proof with(List<ThreatResult> tried, List<Residual> left) {
        return new Proof(results, tried, left, effort, bounds);
    }

    /** The same proof, of a plan whose search had limits of its own. */
    public Proof alsoBoundedBy(List<Phrase> more) {
        return new Proof(
                results,
                threats,
                residuals,
                effort,
                Stream.concat(bounds.stream(), more.stream()).toList());
    }

    /**
     * How much was looked at.
     *
     * @param modes of the controller, its pulses counted in, that were reached from disarmed
     * @param transitions tried between them
     * @param situations those modes, by what they ask of the outputs, with every position and supply that matters
     * @param solves operating points solved
     * @param corners of the assumed ranges
     */
    public record Effort(int modes, long transitions, long situations, long solves, long corners) {}
}
