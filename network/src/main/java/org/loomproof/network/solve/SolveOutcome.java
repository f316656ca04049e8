package org.loomproof.network.solve;

import java.util.List;
import org.loomproof.network.part.PartId;

/** What came of solving one setting. */
public sealed interface SolveOutcome {
    /**
     * Contacts have come to rest.
     *
     * @param point the answer that follows from the history asked for
     * @param otherStablePoints further points at which contacts would also rest, had the history been another; empty when none
     *     was found among those tried (all relays pulled in, each single relay moved), or when they were not asked for
     */
    record Settled(OperatingPoint point, List<OperatingPoint> otherStablePoints) implements SolveOutcome {
        public Settled {
            otherStablePoints = List.copyOf(otherStablePoints);
        }
    }

    /**
     * Contacts never come to rest: each pattern calls for another, in a circle.
     *
     * @param moving the parts whose contacts move within the circle, in network order
     */
    record Chattering(List<PartId> moving) implements SolveOutcome {
        public Chattering {
            moving = List.copyOf(moving);
        }
    }

    /**
     * Contacts that move together go in a circle, but come to rest if one is first: the result depends on which is faster.
     *
     * @param moving the parts that race, in network order
     * @param stablePoints where they may come to rest
     */
    record Racing(List<PartId> moving, List<OperatingPoint> stablePoints) implements SolveOutcome {
        public Racing {
            moving = List.copyOf(moving);
            stablePoints = List.copyOf(stablePoints);
        }
    }

    /**
     * No voltages were found within the bounded number of steps, or none that satisfy Kirchhoff's current law.
     *
     * @param residualAmps the largest sum of currents at a node when the search ended
     * @param contactMoves how many patterns of contacts had been tried
     */
    record NotConverged(double residualAmps, int contactMoves) implements SolveOutcome {}

    /**
     * The point, for a caller who knows that contacts come to rest.
     *
     * @throws IllegalStateException if they do not
     */
    default OperatingPoint settledPoint() {
        if (this instanceof Settled(OperatingPoint point, List<OperatingPoint> ignored)) {
            return point;
        }
        throw new IllegalStateException("not settled: " + this);
    }
}
