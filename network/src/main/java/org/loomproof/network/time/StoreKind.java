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
    private final Method method;
    final int count;
    final int[] branch;

    /** Whether each branch is there at all as things are switched. */
    final boolean[] counts;

    /** y where the step begins. */
    final double[] value;

    /** f at each stage, of which the first is where the step begins. */
    private final double[][] rates;

    /** What the present stage starts from, and the y and f it finds. */
    final double[] start;

    final double[] found;
    double[] foundRate;

    private final int[] from;
    private final int[] to;

    /** The largest size each y has had, at least a floor: what errors are measured by. */
    private final double[] scale;

    StoreKind(CompanionSolver solver, Method method, List<Integer> branches, double floor) {
        this.solver = solver;
        this.method = method;
        count = branches.size();
        branch = branches.stream().mapToInt(Integer::intValue).toArray();
        from = Arrays.stream(branch).map(solver::rankFrom).toArray();
        to = Arrays.stream(branch).map(solver::rankTo).toArray();
        counts = new boolean[count];
        value = new double[count];
        rates = new double[method.stages()][count];
        found = new double[count];
        foundRate = rates[0];
        start = new double[count];
        scale = new double[count];
        Arrays.fill(scale, floor);
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
        scale[k] = Math.max(scale[k], Math.abs(first));
    }

    /** Voltage across a branch as the last solution has it. */
    final double volts(int k) {
        double[] volts = solver.volts();
        return volts[from[k]] - volts[to[k]];
    }

    /** Freezes every y: see {@link #frozen}. */
    final void freeze() {
        foundRate = rates[0];
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
        }
    }

    /** Begins a stage of a step of so many seconds. */
    final void toStage(int stage, double seconds) {
        foundRate = rates[stage];
        System.arraycopy(value, 0, start, 0, count);
        double[] shares = method.shares[stage];
        for (int before = 0; before < stage; before++) {
            double[] rate = rates[before];
            double share = seconds * shares[before];
            for (int k = 0; k < count; k++) {
                start[k] += share * rate[k];
            }
        }
        stand(seconds * method.diagonal);
    }

    /** Puts the companions in the branches' places. */
    abstract void stand(double seconds);

    /**
     * Reads what the solution found.
     *
     * @return whether companions have been put anew and the network must be solved again
     */
    abstract boolean read(double seconds);

    /** The largest error of a step of so many seconds, each as a part of the size of its y. */
    final double worstError(double seconds) {
        double worst = 0;
        for (int k = 0; k < count; k++) {
            double error = 0;
            for (int stage = 0; stage < rates.length; stage++) {
                error += method.error[stage] * rates[stage][k];
            }
            worst = Math.max(worst, Math.abs(seconds * error) / Math.max(scale[k], Math.abs(found[k])));
        }
        return worst;
    }

    /** The step is taken: its end is where the next begins. */
    final void take() {
        for (int k = 0; k < count; k++) {
            value[k] = found[k];
            scale[k] = Math.max(scale[k], Math.abs(value[k]));
        }
        double[] first = rates[0];
        rates[0] = rates[method.last()];
        rates[method.last()] = first;
    }

    /** The least time in which some y would move by its own size. */
    final double leastSeconds() {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            least = Math.min(least, scale[k] / Math.abs(rates[0][k]));
        }
        return least;
    }

    /** Energy held where the step begins, joules, as far as it can be given back to the network. */
    double joules(int k) {
        return 0;
    }
}
