package org.loomproof.network.solve;

/**
 * Sums the currents of all branches at every node, as the curves give them. The tangents' currents sum to zero by
 * construction but for rounding, so both are looked at: the tangents' sums, and on top of them what each curve differs from
 * its tangent.
 */
final class KirchhoffCheck {
    /** Part of what the law is checked to that need not be read off a curve exactly. */
    private static final double NEGLIGIBLE_PART = 1e-3;

    private final Layout layout;
    private final BranchSums sums;
    private final Curves curves;

    private final double[] sum;
    private double leftOutAmps;
    private double worstAmps;

    KirchhoffCheck(Layout layout, BranchSums sums, Curves curves) {
        this.layout = layout;
        this.sums = sums;
        this.curves = curves;
        this.sum = new double[layout.rankCount + 1];
    }

    /**
     * Tells whether at each node what flows in flows out, to {@code absoluteAmps} plus {@code relative} of the largest
     * current there.
     */
    boolean holds(double[] volts, double absoluteAmps, double relative) {
        sums.leaving(volts, sum);
        leftOutAmps = curves.addMisses(volts, sum, NEGLIGIBLE_PART * absoluteAmps);
        worstAmps = 0;
        for (int k = 0; k < layout.rankCount; k++) {
            worstAmps = Math.max(worstAmps, Math.abs(sum[k]));
        }
        worstAmps += leftOutAmps;
        return worstAmps <= absoluteAmps || holdsAgainstLargest(volts, absoluteAmps, relative);
    }

    private boolean holdsAgainstLargest(double[] volts, double absoluteAmps, double relative) {
        double[] largest = new double[layout.rankCount + 1];
        for (int b = 0; b < layout.branchCount; b++) {
            double size = Math.abs(sums.amps(b, volts[layout.from[b]] - volts[layout.to[b]]));
            largest[layout.from[b]] = Math.max(largest[layout.from[b]], size);
            largest[layout.to[b]] = Math.max(largest[layout.to[b]], size);
        }
        for (int k = 0; k < layout.rankCount; k++) {
            if (!(Math.abs(sum[k]) + leftOutAmps <= absoluteAmps + relative * largest[k])) {
                return false;
            }
        }
        return true;
    }

    /** The largest sum at any node but the chassis at the last check. */
    double worstAmps() {
        return worstAmps;
    }
}
