package org.loomproof.network.time;

/**
 * How long the next step may be, from the errors of those before, each as a part of what is allowed. After a step taken the error is
 * thought to go on shrinking or growing as it did (predictive control, Gustafsson, 1994): an exponential dies away as its steps
 * grow. After one refused it is thought to go with that power of the length with which the last two tries went: at a corner
 * that is the first power or less. Lengths in seconds.
 */
final class Pace {
    private static final double SAFETY = 0.95;
    private static final double MOST_GROWTH = 8;
    private static final double MOST_SHRINKING = 0.1;
    private static final double MOST_TREND = 2;
    private static final double LEAST_POWER = 0.25;
    private static final double LEAST_ERROR = 1e-6;

    /** The power of the length with which the error of a step goes. */
    private final double power;

    private double takenSeconds = Double.NaN;
    private double takenError;
    private double refusedSeconds = Double.NaN;
    private double refusedError;

    Pace(int power) {
        this.power = power;
    }

    /** Nothing is known of errors: after a jump. */
    void begin() {
        takenSeconds = Double.NaN;
        refusedSeconds = Double.NaN;
    }

    /** The length of the step after one that was taken. */
    double afterTaken(double seconds, double error) {
        double size = Math.max(error, LEAST_ERROR);
        double factor = SAFETY * root(1 / size);
        if (!Double.isNaN(takenSeconds)) {
            double trend = root(takenError / size) * seconds / takenSeconds;
            factor *= Math.clamp(trend, 1 / MOST_TREND, MOST_TREND);
        }
        takenSeconds = seconds;
        takenError = size;
        refusedSeconds = Double.NaN;
        return seconds * Math.clamp(factor, MOST_SHRINKING, MOST_GROWTH);
    }

    /** The length to try instead of one that was refused; its error is NaN when no voltages were found. */
    double afterRefused(double seconds, double error) {
        double factor = MOST_SHRINKING;
        if (!Double.isNaN(error)) {
            double found = Double.isNaN(refusedSeconds)
                    ? power
                    : Math.log(refusedError / error) / Math.log(refusedSeconds / seconds);
            factor = SAFETY * Math.pow(error, -1 / Math.clamp(found, LEAST_POWER, power));
        }
        refusedSeconds = seconds;
        refusedError = error;
        return seconds * Math.clamp(factor, MOST_SHRINKING, 0.9);
    }

    private double root(double ratio) {
        return Math.pow(ratio, 1 / power);
    }
}
