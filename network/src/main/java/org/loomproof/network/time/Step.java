package org.loomproof.network.time;

import java.util.Arrays;
import org.loomproof.network.solve.CompanionSolver;

/**
 * One step in time by the trapezoidal rule to an inner point and the second backward difference from there (TR-BDF2; Bank,
 * Coughran, Fichtner, Grosse, Rose and Smith, 1985; Hosea and Shampine, 1996). With c = 2 - sqrt 2 and d = c / 2:
 *
 * <pre>
 * inner:  y(t + c h) = y + d h f + d h f(t + c h)
 * end:    y(t + h)   = y(t + c h) / (c (2 - c)) - y (1 - c)^2 / (c (2 - c)) + d h f(t + h)
 * error:  2 k h (f / c - f(t + c h) / (c (1 - c)) + f(t + h) / (1 - c)),  k = (-3 c^2 + 4 c - 2) / (12 (2 - c))
 * </pre>
 *
 * Voltages that follow from the stores at once, such as that of a coil whose clamp stops conducting, have no error of this
 * kind. For them the step is bounded by how far the inner point lies off the straight line from start to end.
 *
 * <p>Second order, and damps stiff parts to nothing. Both stages ask the same of the equations, y = start + d h f(y), so
 * companions change from step to step only with h. {@link #freeze} is the same with h zero: the instant after a jump, with
 * all stores as they were, which gives the rates to begin again from.
 */
final class Step {
    private static final double C = 2 - Math.sqrt(2);

    /** Part of the step at which the inner point lies. */
    static final double INNER = C;

    private static final double D = C / 2;
    private static final double FROM_INNER = 1 / (C * (2 - C));
    private static final double FROM_START = -(1 - C) * (1 - C) / (C * (2 - C));
    private static final double K = 2 * (-3 * C * C + 4 * C - 2) / (12 * (2 - C));

    /** Integral over a step from its three points: sqrt 2 / 4, the same, and d. */
    static final double WEIGHT_START = Math.sqrt(2) / 4;

    static final double WEIGHT_END = D;

    /** How far off the line a voltage may lie, as a part of its largest so far, at tolerance t: t^(2/3) times this. */
    private static final double BEND_PART = 1;

    private static final double BEND_FLOOR_VOLTS = 0.5;

    private static final double FIRST_PART = 2;

    /** Filaments and their networks agree after one or two turns. */
    private static final int MOST_TURNS = 30;

    private final CompanionSolver solver;
    private final Sources sources;
    private final Margins margins;
    private final StoreKind[] stores;
    private final double tolerance;

    private final Recorder recorder;
    private final double[] startVolts;
    private final double[] largestVolts;

    /** Of each voltage at the end of the last step. */
    private final double[] slopes;

    private final double[] guess;
    private final double bendAllowed;
    private double innerMargin;
    private double endMargin;

    Step(
            CompanionSolver solver,
            Sources sources,
            Margins margins,
            Recorder recorder,
            StoreKind[] stores,
            double tolerance) {
        this.solver = solver;
        this.sources = sources;
        this.margins = margins;
        this.recorder = recorder;
        this.stores = stores;
        this.tolerance = tolerance;
        bendAllowed = BEND_PART * Math.cbrt(tolerance * tolerance);
        startVolts = new double[solver.rankCount()];
        slopes = new double[solver.rankCount()];
        guess = new double[solver.rankCount()];
        largestVolts = new double[solver.rankCount()];
        Arrays.fill(largestVolts, BEND_FLOOR_VOLTS);
    }

    /** How far events still are, see {@link Margins}. */
    interface Margins {
        double least();
    }

    /** Finds voltages, currents and rates just after a time, with all stores as they are. */
    boolean freeze(double seconds) {
        sources.jump(solver, seconds);
        for (StoreKind kind : stores) {
            kind.freeze();
        }
        if (!solver.solve()) {
            return false;
        }
        for (StoreKind kind : stores) {
            kind.frozen();
        }
        Arrays.fill(slopes, 0);
        start();
        return true;
    }

    /** Along straight lines from voltages at their slopes, volts a second. */
    private void guess(double[] volts, double[] slopes, double seconds) {
        for (int k = 0; k < guess.length; k++) {
            guess[k] = volts[k] + seconds * slopes[k];
        }
        solver.guess(guess);
    }

    /** Along the line from the beginning through the inner point. */
    private void guessEnd() {
        double[] innerVolts = recorder.innerVolts();
        for (int k = 0; k < guess.length; k++) {
            guess[k] = startVolts[k] + (innerVolts[k] - startVolts[k]) / C;
        }
        solver.guess(guess);
    }

    private void start() {
        double[] volts = solver.volts();
        for (int k = 0; k < startVolts.length; k++) {
            startVolts[k] = volts[k];
            largestVolts[k] = Math.max(largestVolts[k], Math.abs(volts[k]));
        }
    }

    /** How far the inner point's voltages lie off the straight line, as a part of what is allowed. */
    private double bend() {
        double[] volts = solver.volts();
        double[] innerVolts = recorder.innerVolts();
        double worst = 0;
        for (int k = 0; k < startVolts.length; k++) {
            double off = Math.abs(innerVolts[k] - ((1 - C) * startVolts[k] + C * volts[k]));
            worst = Math.max(worst, off / Math.max(largestVolts[k], Math.abs(volts[k])));
        }
        return worst / bendAllowed;
    }

    /**
     * Tries a step. The error is told as a part of what is allowed: 1 is just right.
     *
     * @return NaN when no voltages were found
     */
    double attempt(double from, double seconds) {
        double d = D * seconds;
        sources.follow(solver, from + C * seconds);
        guess(startVolts, slopes, C * seconds);
        for (StoreKind kind : stores) {
            kind.toInner(d);
        }
        if (!turn(d, false)) {
            return Double.NaN;
        }
        innerMargin = margins.least();
        recorder.inner();
        sources.follow(solver, from + seconds);
        guessEnd();
        for (StoreKind kind : stores) {
            kind.toEnd(d, FROM_INNER, FROM_START);
        }
        if (!turn(d, true)) {
            return Double.NaN;
        }
        endMargin = margins.least();
        // It grows as the square of the step, the stores' error as the cube.
        double bend = bend();
        double worst = bend * Math.sqrt(bend);
        double k = K * seconds;
        for (StoreKind kind : stores) {
            double error = kind.worstError(k / C, -k / (C * (1 - C)), k / (1 - C));
            worst = Math.max(worst, error / tolerance);
        }
        return worst;
    }

    /** Solves until companions and solution agree; only an end is an answer, and checked. */
    private boolean turn(double d, boolean end) {
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            if (!(end ? solver.solve() : solver.solveUnchecked())) {
                return false;
            }
            boolean again = false;
            for (StoreKind kind : stores) {
                again |= kind.read(d);
            }
            if (!again) {
                return true;
            }
        }
        return false;
    }

    /** The least margin at the inner point, then at the end, of the last step tried. */
    double innerMargin() {
        return innerMargin;
    }

    double endMargin() {
        return endMargin;
    }

    void take(double seconds) {
        double[] innerVolts = recorder.innerVolts();
        double[] volts = solver.volts();
        for (int k = 0; k < slopes.length; k++) {
            slopes[k] = (volts[k] - innerVolts[k]) / ((1 - C) * seconds);
        }
        for (StoreKind kind : stores) {
            kind.take();
        }
        start();
    }

    /**
     * A first step after a jump. In an exponential of time constant T a step h is out by about 0.04 (h / T)^3; of that the
     * tolerance allows {@code FIRST_PART} cubed.
     */
    double firstSeconds() {
        double least = Double.POSITIVE_INFINITY;
        for (StoreKind kind : stores) {
            least = Math.min(least, kind.leastSeconds());
        }
        return FIRST_PART * Math.cbrt(tolerance) * least;
    }
}
