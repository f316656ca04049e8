package org.loomproof.network.time;

import java.util.Arrays;
import java.util.List;
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

    /** Filaments and their networks agree after three or four turns. */
    private static final int MOST_TURNS = 30;

    private final CompanionSolver solver;
    private final Sources sources;
    private final Margins margins;
    private final Store[] stores;
    private final double tolerance;

    /** Voltages and currents at the inner point of the last step tried. */
    final double[] innerVolts;

    final double[] innerAmps;
    private final double[] startVolts;
    private final double[] largestVolts;
    private final double bendAllowed;
    private double innerMargin;
    private double endMargin;

    Step(CompanionSolver solver, Sources sources, Margins margins, List<Store> stores, double tolerance) {
        this.solver = solver;
        this.sources = sources;
        this.margins = margins;
        this.stores = stores.toArray(Store[]::new);
        this.tolerance = tolerance;
        bendAllowed = BEND_PART * Math.cbrt(tolerance * tolerance);
        startVolts = new double[solver.rankCount()];
        largestVolts = new double[solver.rankCount()];
        Arrays.fill(largestVolts, BEND_FLOOR_VOLTS);
        innerVolts = new double[solver.rankCount()];
        innerAmps = new double[solver.branchCount()];
    }

    /** How far events still are, see {@link Margins}. */
    interface Margins {
        double least();
    }

    /** Finds voltages, currents and rates just after a time, with all stores as they are. */
    boolean freeze(double seconds) {
        sources.stand(solver, seconds, true);
        for (Store store : stores) {
            store.stand(solver, 0, store.value);
        }
        if (!solver.solve()) {
            return false;
        }
        for (Store store : stores) {
            store.read(solver, 0, store.value);
            if (!solver.counts(store.branch)) {
                store.value = store.foundValue;
            }
            store.rate = store.foundRate;
        }
        start();
        return true;
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
        if (!stage(from + C * seconds, d, true)) {
            return Double.NaN;
        }
        innerMargin = margins.least();
        System.arraycopy(solver.volts(), 0, innerVolts, 0, innerVolts.length);
        System.arraycopy(solver.amps(), 0, innerAmps, 0, innerAmps.length);
        if (!stage(from + seconds, d, false)) {
            return Double.NaN;
        }
        endMargin = margins.least();
        // It grows as the square of the step, the stores' error as the cube.
        double bend = bend();
        double worst = bend * Math.sqrt(bend);
        for (Store store : stores) {
            double error = K * seconds * (store.rate / C - store.innerRate / (C * (1 - C)) + store.endRate / (1 - C));
            worst = Math.max(worst, Math.abs(error) / (tolerance * Math.max(store.scale, Math.abs(store.endValue))));
        }
        return worst;
    }

    private boolean stage(double at, double d, boolean inner) {
        sources.stand(solver, at, false);
        for (Store store : stores) {
            store.stand(solver, d, start(store, d, inner));
        }
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            if (!solver.solve()) {
                return false;
            }
            boolean again = false;
            for (Store store : stores) {
                again |= store.read(solver, d, start(store, d, inner));
            }
            if (!again) {
                keep(inner);
                return true;
            }
        }
        return false;
    }

    private static double start(Store store, double d, boolean inner) {
        return inner ? store.value + d * store.rate : FROM_INNER * store.innerValue + FROM_START * store.value;
    }

    private void keep(boolean inner) {
        for (Store store : stores) {
            if (inner) {
                store.innerValue = store.foundValue;
                store.innerRate = store.foundRate;
            } else {
                store.endValue = store.foundValue;
                store.endRate = store.foundRate;
            }
        }
    }

    /** The least margin at the inner point, then at the end, of the last step tried. */
    double innerMargin() {
        return innerMargin;
    }

    double endMargin() {
        return endMargin;
    }

    void take() {
        for (Store store : stores) {
            store.take();
        }
        start();
    }

    /** A first step after a jump: each store moves by about what the tolerance lets a straight line be wrong. */
    double firstSeconds() {
        double least = Double.POSITIVE_INFINITY;
        for (Store store : stores) {
            double move = 0.5 * Math.sqrt(tolerance) * store.scale;
            least = Math.min(least, move / Math.abs(store.rate));
        }
        return least;
    }

    double joules() {
        double sum = 0;
        for (Store store : stores) {
            sum += store.joules();
        }
        return sum;
    }
}
