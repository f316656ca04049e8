package org.loomproof.network.time;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Finds the first moment of a step at which some margin reaches zero, by shortening the step until its end lies just beyond. The
 * first guess is where the curve through the margins at the step's stages passes zero, later ones come from a straight line
 * between the nearest tries; after each, one try as far on the other side of it.
 */
final class EventSearch {
    /** Events are told to this many seconds, or to so large a part of the time, or of what a step may be out by. */
    private static final double RESOLUTION_SECONDS = 1e-9;

    private static final double RESOLUTION_PART = 1e-9;
    private static final double RESOLUTION_PART_OF_ERROR = 0.05;
    private static final int MOST_TRIES = 80;
    private static final int HALVINGS = 24;

    private final Method method;
    private final Step step;
    private final double tolerance;
    private final double[] margins;

    /** The stages in the order of time, without the first. */
    private final int[] inTime;

    /** The event lies between these parts of the step. */
    private double low;

    private double high;
    private double resolution;
    private double lowMargin;
    private double highMargin;

    EventSearch(Method method, Step step, double tolerance) {
        this.method = method;
        this.step = step;
        this.tolerance = tolerance;
        margins = new double[method.stages()];
        inTime = IntStream.range(1, method.stages())
                .boxed()
                .sorted(Comparator.comparingDouble(stage -> method.at[stage]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /**
     * The length of the step to take, which the step has then tried last: the whole when nothing happens within.
     *
     * @param from where the step begins
     * @param whole length of the step just tried
     */
    double firstEvent(double from, double whole) {
        if (!isWithin()) {
            return whole;
        }
        double seconds = Math.max(RESOLUTION_SECONDS, RESOLUTION_PART * from);
        resolution = Math.max(seconds / whole, RESOLUTION_PART_OF_ERROR * tolerance);
        double tried = 1;
        double part = passing();
        double width = high - low;
        for (int k = 0; k < MOST_TRIES && high - low > resolution; k++) {
            attempt(from, whole, part);
            tried = part;
            boolean isSlow = k % 4 == 3 && high - low > 0.1 * width;
            if (k % 4 == 3) {
                width = high - low;
            }
            double line = line();
            if (isSlow) {
                part = 0.5 * (low + high);
            } else if (k % 2 == 0) {
                part = beside(line, tried == high);
            } else {
                // Rather before the event, so that the try beside it ends beyond.
                part = inside(line - 0.25 * resolution);
            }
        }
        if (tried != high) {
            step.attempt(from, high * whole);
        }
        return high * whole;
    }

    private void attempt(double from, double whole, double part) {
        boolean isFound = !Double.isNaN(step.attempt(from, part * whole));
        if (!isFound || step.endMargin() <= 0) {
            high = part;
            highMargin = isFound ? step.endMargin() : highMargin;
        } else {
            low = part;
            lowMargin = step.endMargin();
        }
    }

    /** Finds the stages between which the first event lies; whether there is one. */
    private boolean isWithin() {
        low = 0;
        lowMargin = step.stageMargins()[0];
        for (int stage : inTime) {
            double margin = step.stageMargins()[stage];
            if (margin <= 0) {
                high = method.at[stage];
                highMargin = margin;
                return true;
            }
            low = method.at[stage];
            lowMargin = margin;
        }
        return false;
    }

    /** Where between the two stages the curve through all stages' margins but the first passes zero. */
    private double passing() {
        System.arraycopy(step.stageMargins(), 0, margins, 0, margins.length);
        double before = low;
        double after = high;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = 0.5 * (before + after);
            if (margin(middle) > 0) {
                before = middle;
            } else {
                after = middle;
            }
        }
        return inside(after);
    }

    private double margin(double part) {
        double sum = 0;
        for (int stage = 1; stage < method.stages(); stage++) {
            double weight = margins[stage];
            for (int other = 1; other < method.stages(); other++) {
                if (other != stage) {
                    weight *= (part - method.at[other]) / (method.at[stage] - method.at[other]);
                }
            }
            sum += weight;
        }
        return sum;
    }

    /** Where the straight line between the nearest tries passes zero. */
    private double line() {
        double share = lowMargin / (lowMargin - highMargin);
        return inside(share > 0 && share < 1 ? low + share * (high - low) : 0.5 * (low + high));
    }

    /** A little on the other side of where the event is thought to be. */
    private double beside(double part, boolean isBeyond) {
        return inside(
                isBeyond ? high - 2 * (high - part) - 0.5 * resolution : low + 2 * (part - low) + 0.5 * resolution);
    }

    private double inside(double part) {
        double edge = Math.min(0.01 * (high - low), 0.25 * resolution);
        return Math.clamp(part, low + edge, high - edge);
    }
}
