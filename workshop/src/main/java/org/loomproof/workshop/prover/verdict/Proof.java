package org.loomproof.workshop.prover.verdict;

import java.util.List;
import java.util.function.UnaryOperator;
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

    /** How many claims are broken that another plan may meet. */
    public int countBroken() {
        return (int) results.stream().filter(ClaimResult::countsAsBroken).count();
    }

    /** The same proof with what a thief may try. */
    public Proof with(List<ThreatResult> tried) {
        return new Proof(results, tried, residuals, effort, bounds);
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

    /** The same proof with results that say more. */
    public Proof restated(UnaryOperator<ClaimResult> saying) {
        return new Proof(results.stream().map(saying).toList(), threats, residuals, effort, bounds);
    }

    /** The same proof with what vehicle and controller can come to. */
    public Proof with(Reached reached) {
        return new Proof(results, threats, residuals, effort.with(reached), bounds);
    }

    /**
     * How much was looked at.
     *
     * @param modes of the controller, its pulses counted in, that were reached from disarmed
     * @param transitions tried between them
     * @param situations those modes, by what they ask of the outputs, with every position and supply that matters
     * @param solves operating points solved
     * @param corners of the assumed ranges
     * @param reached states of vehicle and controller together
     */
    public record Effort(int modes, long transitions, long situations, long solves, long corners, Reached reached) {

        /** Of a proof that stepped through nothing. */
        public Effort(int modes, long transitions, long situations, long solves, long corners) {
            this(modes, transitions, situations, solves, corners, Reached.NOTHING);
        }

        /** With what else was looked at of the same controller. */
        public Effort and(Effort other) {
            return new Effort(
                    modes,
                    transitions,
                    situations + other.situations,
                    solves + other.solves,
                    corners + other.corners,
                    reached);
        }

        Effort with(Reached other) {
            return new Effort(modes, transitions, situations, solves, corners, other);
        }
    }

    /**
     * What vehicle and controller come to together, step by step from a car at rest.
     *
     * @param states how many were reached
     * @param standFor how many states those stand for, with all that matters where the controller is joined
     * @param transitions steps between them
     * @param solves operating points that had to be solved for it beyond those of the claims
     * @param unsettled states in which contacts do not come to rest, or nobody can say
     * @param complete false where the search stopped at its limit
     */
    public record Reached(long states, long standFor, long transitions, long solves, long unsettled, boolean complete) {

        /** Nothing was stepped through. */
        public static final Reached NOTHING = new Reached(0, 0, 0, 0, 0, true);
    }
}
