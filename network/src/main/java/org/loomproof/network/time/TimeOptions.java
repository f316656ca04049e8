package org.loomproof.network.time;

import org.loomproof.network.part.TimeCurrentBand;

/**
 * How closely a run looks.
 *
 * @param tolerance error allowed in one step, as a part of the largest value each charge, coil current or temperature has had
 *     (but at least of 0.1 V, 1 mA); 1e-7 to 0.1
 * @param longestStep seconds; infinite for a tenth of the run
 * @param mostSteps steps tried, taken or not, before the run is given up
 * @param fuses which side of their band fuses open at
 */
public record TimeOptions(double tolerance, double longestStep, int mostSteps, TimeCurrentBand.Edge fuses) {
    /** 1e-4 a step, at most a million steps, fuses at their latest. */
    public static final TimeOptions USUAL =
            new TimeOptions(1e-4, Double.POSITIVE_INFINITY, 1_000_000, TimeCurrentBand.Edge.LATEST);

    /** Tangents of diodes are held to some 1e-8 V, so a step cannot be told more closely than this. */
    public static final double LEAST_TOLERANCE = 1e-7;

    public TimeOptions {
        if (!(tolerance >= LEAST_TOLERANCE && tolerance <= 0.1)) {
            throw new IllegalArgumentException("tolerance must lie between 1e-7 and 0.1, was " + tolerance);
        }
        if (!(longestStep > 0) || mostSteps < 1) {
            throw new IllegalArgumentException(
                    "step and number of steps must be above zero, were " + longestStep + ", " + mostSteps);
        }
    }

    /** With another error allowed in each step. */
    public TimeOptions withTolerance(double each) {
        return new TimeOptions(each, longestStep, mostSteps, fuses);
    }

    /** With another longest step, seconds. */
    public TimeOptions withLongestStep(double seconds) {
        return new TimeOptions(tolerance, seconds, mostSteps, fuses);
    }

    /** With another bound on the steps tried. */
    public TimeOptions withMostSteps(int steps) {
        return new TimeOptions(tolerance, longestStep, steps, fuses);
    }

    /** With fuses that open at another side of their band. */
    public TimeOptions withFuses(TimeCurrentBand.Edge edge) {
        return new TimeOptions(tolerance, longestStep, mostSteps, edge);
    }
}
