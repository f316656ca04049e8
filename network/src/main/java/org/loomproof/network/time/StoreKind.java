package org.loomproof.network.time;

import java.util.Arrays;
import java.util.List;
import org.loomproof.network.solve.CompanionSolver;

/**
 * All numbers of one kind that last, in flat arrays: y with dy/dt = f. A stage of a step asks for y = start + seconds f(y); for
 * the time of its solution the branch stands for the companion that says the same. With {@code seconds} zero, y is frozen and f
 * is what is asked for.
 */
abstract sealed class StoreKind permits CoilStores, CapacitorStores, FilamentStores, FuseStores {
    final CompanionSolver solver;
    final int count;
    final int[] branch;

    /** Whether each branch is there at all as things are switched. */
    final boolean[] counts;

    /** y and f where the step begins, at its inner point and at its end. */
    final double[] value;

    final double[] rate;
    final double[] innerValue;
    final double[] innerRate;
    final double[] endValue;
    final double[] endRate;

    /** What the present stage starts from, and where it writes what it finds. */
    final double[] start;

    double[] found;
    double[] foundRate;

    private final int[] from;
    private final int[] to;

    /** The largest size each y has had, at least a floor: what errors are measured by. */
    private final double[] scale;

    StoreKind(CompanionSolver solver, List<Integer> branches, double floor) {
        this.solver = solver;
        count = branches.size();
        branch = branches.stream().mapToInt(Integer::intValue).toArray();
        from = Arrays.stream(branch).map(solver::rankFrom).toArray();
        to = Arrays.stream(branch).map(solver::rankTo).toArray();
        counts = new boolean[count];
        value = new double[count];
        rate = new double[count];
        innerValue = new double[count];
        innerRate = new double[count];
        endValue = new double[count];
        endRate = new double[count];
        start = new double[count];
        scale = new double[count];
        Arrays.fill(scale, floor);
        found = endValue;
        foundRate = endRate;
    }

    /** Takes over what is switched how. */
    final void configure() {
        for (int k = 0; k < count; k++) {
            counts[k] = solver.counts(branch[k]);
        }
    }

    /** Begins a run at this value. */
    final void begin(int k, double first) {
        value[k] = first;
        rate[k] = 0;
        scale[k] = Math.max(scale[k], Math.abs(first));
    }

    /** Voltage across a branch as the last solution has it. */
    final double volts(int k) {
        double[] volts = solver.volts();
        return volts[from[k]] - volts[to[k]];
    }

    /** Freezes every y: see {@link #frozen}. */
    final void freeze() {
        found = endValue;
        foundRate = endRate;
        System.arraycopy(value, 0, start, 0, count);
        stand(0);
    }

    /** Takes what a frozen solution found as what the next step begins with. */
    final void frozen() {
        read(0);
        for (int k = 0; k < count; k++) {
            if (!counts[k]) {
                value[k] = found[k];
            }
            rate[k] = foundRate[k];
        }
    }

    /** Begins the stage to the inner point. */
    final void toInner(double seconds) {
        found = innerValue;
        foundRate = innerRate;
        for (int k = 0; k < count; k++) {
            start[k] = value[k] + seconds * rate[k];
        }
        stand(seconds);
    }

    /** Begins the stage to the end, from so much of the inner point's values and so much of the beginning's. */
    final void toEnd(double seconds, double ofInner, double ofBeginning) {
        found = endValue;
        foundRate = endRate;
        for (int k = 0; k < count; k++) {
            start[k] = ofInner * innerValue[k] + ofBeginning * value[k];
        }
        stand(seconds);
    }

    /** Puts the companions in the branches' places. */
    abstract void stand(double seconds);

    /**
     * Reads what the solution found.
     *
     * @return whether companions have been put anew and the network must be solved again
     */
    abstract boolean read(double seconds);

    /** The largest of the sums of the three rates, weighted so, each as a part of the size of its y. */
    final double worstError(double ofBeginning, double ofInner, double ofEnd) {
        double worst = 0;
        for (int k = 0; k < count; k++) {
            double error = ofBeginning * rate[k] + ofInner * innerRate[k] + ofEnd * endRate[k];
            worst = Math.max(worst, Math.abs(error) / Math.max(scale[k], Math.abs(endValue[k])));
        }
        return worst;
    }

    /** The step is taken: its end is where the next begins. */
    final void take() {
        for (int k = 0; k < count; k++) {
            value[k] = endValue[k];
            rate[k] = endRate[k];
            scale[k] = Math.max(scale[k], Math.abs(value[k]));
        }
    }

    /** The least time in which some y would move by its own size. */
    final double leastSeconds() {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            least = Math.min(least, scale[k] / Math.abs(rate[k]));
        }
        return least;
    }

    /** Energy held where the step begins, joules, as far as it can be given back to the network. */
    double joules(int k) {
        return 0;
    }
}
