package org.loomproof.network.corner;

import java.util.Map;
import org.loomproof.network.solve.SolveOutcome;

/** What came of looking for the worst. */
public sealed interface WorstCase {
    /** How the extremes were found, and how far they may be relied on. */
    enum Method {
        /**
         * All vertices were solved, and the extremes are theirs: every part is straight, so for contacts that stand as they do
         * at every vertex a voltage or current is (a + b x) / (c + d x) in each resistance and a + b x in each source, and
         * rises or falls with each by itself.
         */
        PROVEN_AT_VERTICES,
        /**
         * A product of a voltage and a current of such a network: the box was divided, and in each piece either factor lies
         * between its values at the piece's vertices, so the product lies within the product of the two intervals. Nothing
         * anywhere lies beyond the bounds, and the extremes told were met.
         */
        ENCLOSED_BY_INTERVALS,
        /**
         * All vertices were solved, points drawn in between with a fixed seed, and from the worst of these it was walked on
         * uphill. Some part bends, some quantity moves several elements, what is asked for is neither, or contacts do not stand
         * alike: something worse may lie where nothing was looked at.
         */
        VERTICES_AND_DRAWN,
        /** Too many quantities for all vertices: vertices and points in between were drawn, with a fixed seed. */
        DRAWN
    }

    /** A value met, and at what. */
    record Extreme(double value, Map<String, Double> at) {
        public Extreme {
            at = Map.copyOf(at);
        }
    }

    /** Between these what was asked for certainly lies; infinite where nothing is known. */
    record Bounds(double low, double high) {
        /** Nothing is known. */
        public static final Bounds NONE = new Bounds(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /**
     * Least and greatest of what was asked for, as far as met.
     *
     * @param points operating points solved
     */
    record Between(Extreme least, Extreme greatest, Bounds bounds, Method method, int points) implements WorstCase {}

    /** At some values the network has no settled point, so there is no worst. */
    record NoPoint(Map<String, Double> at, SolveOutcome outcome) implements WorstCase {
        public NoPoint {
            at = Map.copyOf(at);
        }
    }
}
