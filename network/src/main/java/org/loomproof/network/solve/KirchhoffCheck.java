package org.loomproof.network.solve;

import java.util.Arrays;

/**
 * Sums the currents of all branches at every node, as the curves give them. The tangents' currents sum to zero by
 * construction but for rounding, so both are looked at: the tangents' sums, and on top of them what each curve differs from
 * its tangent.
 */
final class KirchhoffCheck {
    private final Layout layout;
    private final BranchSums sums;
    private final Curves curves;

    private final double[] sum;

    /** Per rank, by how much more the sum may be than told. */
    private final double[] open;

    private double worstAmps;

    KirchhoffCheck(Layout layout, BranchSums sums, Curves curves) {
        this.layout = layout;
        this.sums = sums;
        this.curves = curves;
        this.sum = new double[layout.rankCount + 1];
        this.open = new double[layout.rankCount + 1];
    }

    /**
     * Tells whether at each node what flows in flows out, to {@code absoluteAmps} plus {@code relative} of the largest
     * current there. The curves are read off only if the most that their tangents may miss does not tell.
     */
    boolean holds(double[] volts, double absoluteAmps, double relative) {
        sums.leaving(volts, sum);
        Arrays.fill(open, 0);
        curves.addMostMisses(volts, open);
        if (worst() <= absoluteAmps) {
            return true;
        }
        Arrays.fill(open, 0);
        curves.addMisses(volts, sum);
        return worst() <= absoluteAmps || holdsAgainstLargest(volts, absoluteAmps, relative);
    }

    private double worst() {
        worstAmps = 0;
        for (int k = 0; k < layout.rankCount; k++) {
            worstAmps = Math.max(worstAmps, Math.abs(sum[k]) + open[k]);
        }
        return worstAmps;
    }

    private boolean holdsAgainstLargest(double[] volts, double absoluteAmps, double relative) {
        double[] largest = new double[layout.rankCount + 1];
        for (int b = 0; b < layout.branchCount; b++) {
            double size = Math.abs(sums.amps(b, volts[layout.from[b]] - volts[layout.to[b]]));
            largest[layout.from[b]] = Math.max(largest[layout.from[b]], size);
            largest[layout.to[b]] = Math.max(largest[layout.to[b]], size);
        }
        for (int k = 0; k < layout.rankCount; k++) {
            if (!(Math.abs(sum[k]) <= absoluteAmps + relative * largest[k])) {
                return false;
            }
        }
        return true;
    }

    /** No less than the largest sum at any node but the chassis at the last check. */
    double worstAmps() {
        return worstAmps;
    }
}
