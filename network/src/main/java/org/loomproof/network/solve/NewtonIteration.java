package org.loomproof.network.solve;

import java.util.Arrays;

/**
 * Newton's iteration for one pattern of contacts: solve with the tangents, move those that miss their curves, again.
 *
 * <p>Every curve rises, so the network's content function is convex and has one minimum, the operating point. Plain steps
 * nearly always get there; when they do not within a bound, steps are shortened along that function, which always does.
 */
final class NewtonIteration {
    private static final int PLAIN_STEPS = 60;
    private static final int SHORTENED_STEPS = 400;
    private static final int POLISHING_STEPS = 4;
    private static final int HALVINGS = 60;

    /** A shortened search has arrived when no voltage moves by more than this. */
    private static final double STILL_VOLTS = 1e-9;

    private final Layout layout;
    private final BranchSums sums;
    private final Factorisation factorisation;
    private final Curves curves;
    private final double[] goal;
    private final double[] trial;
    private long steps;

    NewtonIteration(Layout layout, BranchSums sums, Factorisation factorisation, Curves curves) {
        this.sums = sums;
        this.layout = layout;
        this.factorisation = factorisation;
        this.curves = curves;
        this.goal = new double[layout.rankCount + 1];
        this.trial = new double[layout.rankCount + 1];
    }

    /** Linear solutions so far: a measure of work. */
    long steps() {
        return steps;
    }

    /** Whether the voltages were found; they are written to {@code volts}. */
    boolean solve(double[] volts) {
        return solvePlain(volts, false) || (solveShortened(volts) && solvePlain(volts, false));
    }

    /** As {@link #solve}, but as closely as {@link Trust#rough} says is enough. */
    boolean solveRoughly(double[] volts) {
        return solvePlain(volts, true) || (solveShortened(volts) && solvePlain(volts, true));
    }

    /** A few more steps from voltages already found, as far as they still gain on so many volts. */
    void polish(double[] volts, double missVolts) {
        for (int step = 0; step < POLISHING_STEPS && curves.bendAll(volts, missVolts) != 0; step++) {
            steps++;
            factorisation.refactor();
            factorisation.backSubstitute(volts);
        }
    }

    private boolean solvePlain(double[] volts, boolean roughly) {
        for (int step = 0; step < PLAIN_STEPS; step++) {
            steps++;
            factorisation.refactor();
            factorisation.backSubstituteWatched(volts);
            if ((roughly ? curves.bendIfRough(volts) : curves.bend(volts)) == 0) {
                return true;
            }
        }
        return false;
    }

    private boolean solveShortened(double[] volts) {
        Arrays.fill(volts, 0);
        for (int step = 0; step < SHORTENED_STEPS; step++) {
            steps++;
            curves.touchAt(volts);
            factorisation.refactor();
            factorisation.backSubstitute(goal);
            double part = part(volts);
            double moved = 0;
            for (int k = 0; k < layout.rankCount; k++) {
                double move = part * (goal[k] - volts[k]);
                volts[k] += move;
                moved = Math.max(moved, Math.abs(move));
            }
            if (moved <= STILL_VOLTS) {
                curves.touchAt(volts);
                return true;
            }
        }
        return false;
    }

    /** How much of the step to take: all, or where the content's slope along it has shrunk by half. */
    private double part(double[] volts) {
        double wanted = 0.5 * Math.abs(slope(volts, 0));
        double whole = slope(volts, 1);
        if (whole <= wanted) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = 0.5 * (low + high);
            double slope = slope(volts, middle);
            if (Math.abs(slope) <= wanted) {
                return middle;
            }
            if (slope < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low > 0 ? low : high;
    }

    /** Slope of the content function along the step from volts to goal: each branch's current times the step across it. */
    private double slope(double[] volts, double part) {
        for (int k = 0; k <= layout.rankCount; k++) {
            trial[k] = volts[k] + part * (goal[k] - volts[k]);
        }
        double sum = 0;
        for (int b = 0; b < layout.branchCount; b++) {
            int from = layout.from[b];
            int to = layout.to[b];
            double across = goal[from] - volts[from] - (goal[to] - volts[to]);
            if (across != 0) {
                sum += branchAmps(b, trial[from] - trial[to]) * across;
            }
        }
        return sum;
    }

    private double branchAmps(int branch, double branchVolts) {
        int k = layout.curveOf(branch);
        return k >= 0 && curves.tangents.active[k] ? curves.amps(k, branchVolts) : sums.amps(branch, branchVolts);
    }
}
