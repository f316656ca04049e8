package org.loomproof.network.corner;

import java.util.Map;
import org.loomproof.network.solve.SolveOutcome;

/** What came of looking for the worst. */
public sealed interface WorstCase {
    /** How far the extremes may be relied on. */
    enum Method {
        /**
         * All vertices were solved, and the extremes are theirs: every part is straight, so for contacts that stand as they do
         * at every vertex a voltage or current is (a + b x) / (c + d x) in each resistance and a + b x in each source, and
         * rises or falls with each by itself.
         */
        PROVEN_AT_VERTICES,
        /**
         * All vertices were solved and points drawn in between. Some part bends, some quantity moves several elements, or
         * contacts do not stand alike: something worse may lie where nothing was drawn.
         */
        VERTICES_AND_DRAWN,
        /** Too many quantities for all vertices: vertices and points in between were drawn. */
        DRAWN
    }

    /** A value found, and at what. */
    record Extreme(double value, Map<String, Double> at) {
        public Extreme {
            at = Map.copyOf(at);
        }
    }

    /**
     * Least and greatest of what was asked for.
     *
     * @param points operating points solved
     */
    record Between(Extreme least, Extreme greatest, Method method, int points) implements WorstCase {}

    /** At some values the network has no settled point, so there is no worst. */
    record NoPoint(Map<String, Double> at, SolveOutcome outcome) implements WorstCase {
        public NoPoint {
            at = Map.copyOf(at);
        }
    }
}
