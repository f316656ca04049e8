package org.loomproof.network.time;

/**
 * Finds the first moment of a step at which some margin reaches zero, by shortening the step until its end lies just beyond:
 * the guess is a parabola through the step's three points, then false position, each followed by a look one resolution aside.
 */
final class EventSearch {
    /** Events are told to this many seconds, or to so large a part of the time. */
    private static final double RESOLUTION_SECONDS = 1e-9;

    private static final double RESOLUTION_PART = 1e-9;
    private static final int MOST_TRIES = 80;

    private final Step step;

    EventSearch(Step step) {
        this.step = step;
    }

    /**
     * The length of the step to take, which the step has then tried last: the whole when nothing happens within.
     *
     * @param from where the step begins
     * @param whole length of the step just tried
     */
    double firstEvent(double from, double whole) {
        if (step.innerMargin() > 0 && step.endMargin() > 0) {
            return whole;
        }
        double resolution = Math.max(RESOLUTION_SECONDS, RESOLUTION_PART * from);
        double low = 0;
        double lowMargin = Double.NaN;
        double high = whole;
        double highMargin = step.endMargin();
        double tried = whole;
        if (step.innerMargin() <= 0) {
            high = Step.INNER * whole;
            highMargin = step.innerMargin();
        } else {
            low = Step.INNER * whole;
            lowMargin = step.innerMargin();
        }
        for (int k = 0; k < MOST_TRIES && high - low > resolution; k++) {
            double guess = guess(low, lowMargin, high, highMargin, resolution, k);
            boolean found = !Double.isNaN(step.attempt(from, guess));
            tried = guess;
            if (!found || step.endMargin() <= 0) {
                high = guess;
                highMargin = found ? step.endMargin() : highMargin;
            } else {
                low = guess;
                lowMargin = step.endMargin();
            }
        }
        if (tried != high) {
            step.attempt(from, high);
        }
        return high;
    }

    private static double guess(
            double low, double lowMargin, double high, double highMargin, double resolution, int k) {
        double width = high - low;
        double share = lowMargin / (lowMargin - highMargin);
        boolean usable = share > 0 && share < 1;
        double root = usable ? low + share * width : low + 0.5 * width;
        return switch (k % 3) {
            case 0 -> Math.clamp(root, low + 0.01 * width, high - 0.01 * width);
            // The last guess lies near the event: look just beside it, on the other side.
            case 1 ->
                Math.clamp(
                        Math.abs(root - low) < Math.abs(high - root)
                                ? low + 2 * (root - low) + 0.5 * resolution
                                : high - 2 * (high - root) - 0.5 * resolution,
                        low + 0.25 * Math.min(resolution, width),
                        high - 0.25 * Math.min(resolution, width));
            default -> low + 0.5 * width;
        };
    }
}
