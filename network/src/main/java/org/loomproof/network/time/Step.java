package org.loomproof.network.time;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.loomproof.network.solve.CompanionSolver;

/**
 * One step in time by the {@link Method}: stage after stage asks y = start + d f(y) of every store, with d the same for all stages of
 * a step, so companions change from step to step only with its length. {@link #freeze} is the same with d zero: the instant after a
 * jump, with all stores as they were, which gives the rates to begin again from.
 *
 * <p>Voltages that follow from the stores at once, such as that of a coil whose clamp stops conducting, have no error of their
 * own. For them the step is bounded by how far its stages bend away from a cubic.
 */
final class Step {
    private static final double BEND_FLOOR_VOLTS = 0.5;

    /** Filaments and their networks agree after one or two turns. */
    private static final int MOST_TURNS = 30;

    private final Method method;
    private final CompanionSolver solver;
    private final Sources sources;
    private final Margins margins;
    private final StoreKind[] stores;
    private final double tolerance;

    private final Recorder recorder;

    /** Voltages at each stage but the last. */
    private final double[][] stageVolts;

    private final double[] stageMargins;
    private final double[] endSlopes;
    private final double[] largestVolts;

    /** Of each voltage at the end of the last step. */
    private final double[] slopes;

    /** The bend of each voltage. */
    private final double[] off;

    private final double bendAllowed;

    Step(
            Method method,
            CompanionSolver solver,
            Sources sources,
            Margins margins,
            Recorder recorder,
            StoreKind[] stores,
            double tolerance) {
        this.method = method;
        this.solver = solver;
        this.sources = sources;
        this.margins = margins;
        this.recorder = recorder;
        this.stores = stores;
        this.tolerance = tolerance;
        bendAllowed = method.bendPart * Math.pow(tolerance, (double) method.order / method.errorPower());
        stageMargins = new double[method.stages()];
        endSlopes = IntStream.range(0, method.kept.length)
                .mapToDouble(method::endSlope)
                .toArray();
        stageVolts = new double[method.last()][solver.rankCount()];
        slopes = new double[solver.rankCount()];
        off = new double[solver.rankCount()];
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
        stageMargins[0] = margins.least();
        start();
        return true;
    }

    /** Begins a stage at voltages thought to come near it. */
    private void guess(int stage, double seconds) {
        double[] volts = solver.volts();
        System.arraycopy(stageVolts[0], 0, volts, 0, volts.length);
        if (stage == 1) {
            add(volts, method.at[1] * seconds, slopes);
        } else {
            scale(volts, method.guess[stage][0]);
            for (int before = 1; before < stage; before++) {
                add(volts, method.guess[stage][before], stageVolts[before]);
            }
        }
        solver.guess(volts);
    }

    private static void scale(double[] values, double weight) {
        for (int k = 0; k < values.length; k++) {
            values[k] *= weight;
        }
    }

    private static void add(double[] sum, double weight, double[] values) {
        for (int k = 0; k < sum.length; k++) {
            sum[k] += weight * values[k];
        }
    }

    private void start() {
        double[] volts = solver.volts();
        double[] startVolts = stageVolts[0];
        for (int k = 0; k < startVolts.length; k++) {
            startVolts[k] = volts[k];
            largestVolts[k] = Math.max(largestVolts[k], Math.abs(volts[k]));
        }
    }

    /** How far the stages' voltages bend away from a cubic, as a part of what is allowed. */
    private double bend() {
        double[] volts = solver.volts();
        System.arraycopy(volts, 0, off, 0, off.length);
        scale(off, method.bend[method.last()]);
        for (int stage = 0; stage < method.last(); stage++) {
            add(off, method.bend[stage], stageVolts[stage]);
        }
        double worst = 0;
        for (int k = 0; k < volts.length; k++) {
            worst = Math.max(worst, Math.abs(off[k]) / Math.max(largestVolts[k], Math.abs(volts[k])));
        }
        return worst / bendAllowed;
    }

    /**
     * Tries a step. The error is told as a part of what is allowed: 1 is just right.
     *
     * @return NaN when no voltages were found
     */
    double attempt(double from, double seconds) {
        for (int stage = 1; stage < method.stages(); stage++) {
            sources.follow(solver, from + method.at[stage] * seconds);
            guess(stage, seconds);
            for (StoreKind kind : stores) {
                kind.toStage(stage, seconds);
            }
            boolean last = stage == method.last();
            if (!turn(method.diagonal * seconds, last)) {
                return Double.NaN;
            }
            stageMargins[stage] = margins.least();
            if (!last) {
                System.arraycopy(solver.volts(), 0, stageVolts[stage], 0, slopes.length);
                recorder.stage(stage);
            }
        }
        // It grows with one power of the step less than the stores' error.
        double worst = Math.pow(bend(), (double) method.errorPower() / method.order);
        for (StoreKind kind : stores) {
            worst = Math.max(worst, kind.worstError(seconds) / tolerance);
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

    /** The least margin at each stage of the last step tried. */
    double[] stageMargins() {
        return stageMargins;
    }

    double endMargin() {
        return stageMargins[method.last()];
    }

    /** Voltages at each stage of the last step tried but its last. */
    double[][] stageVolts() {
        return stageVolts;
    }

    void take(double seconds) {
        System.arraycopy(solver.volts(), 0, slopes, 0, slopes.length);
        scale(slopes, endSlopes[method.kept.length - 1] / seconds);
        for (int kept = 0; kept + 1 < method.kept.length; kept++) {
            add(slopes, endSlopes[kept] / seconds, stageVolts[method.kept[kept]]);
        }
        for (StoreKind kind : stores) {
            kind.take();
        }
        stageMargins[0] = endMargin();
        start();
    }

    /** A first step after a jump, from how fast the fastest store moves. */
    double firstSeconds() {
        double least = Double.POSITIVE_INFINITY;
        for (StoreKind kind : stores) {
            least = Math.min(least, kind.leastSeconds());
        }
        return method.firstPart * Math.pow(tolerance, 1.0 / method.errorPower()) * least;
    }
}
