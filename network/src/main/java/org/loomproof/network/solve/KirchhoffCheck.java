package org.loomproof.network.solve;

import java.util.Arrays;

/** Sums the exact currents of all branches at every node. Uses the curves themselves, not their tangents. */
final class KirchhoffCheck {
    private final Layout layout;
    private final Factorisation factorisation;
    private final Curves curves;
    private final double[] exact;
    private final double[] sum;
    private final double[] largest;
    private double worstAmps;

    KirchhoffCheck(Layout layout, Factorisation factorisation, Curves curves) {
        this.layout = layout;
        this.factorisation = factorisation;
        this.curves = curves;
        this.exact = new double[layout.branchCount];
        this.sum = new double[layout.rankCount + 1];
        this.largest = new double[layout.rankCount + 1];
    }

    /**
     * Tells whether at each node what flows in flows out, to {@code absoluteAmps} plus {@code relative} of the largest
     * current there, and fills in {@code amps}: the currents of the tangents, which sum to zero by construction and lie
     * closer to the answer than a curve read at voltages that are nearly right.
     */
    boolean holds(double[] volts, double[] amps, double absoluteAmps, double relative) {
        Arrays.fill(sum, 0);
        Arrays.fill(largest, 0);
        for (int b = 0; b < layout.branchCount; b++) {
            int from = layout.from[b];
            int to = layout.to[b];
            amps[b] = factorisation.conductance(b) * (volts[from] - volts[to]) + factorisation.amps(b);
        }
        System.arraycopy(amps, 0, exact, 0, amps.length);
        for (CurvedBranches kind : curves.kinds) {
            for (int k = 0; k < kind.count; k++) {
                if (kind.active[k]) {
                    exact[kind.branch[k]] = kind.amps(k, volts[kind.from[k]] - volts[kind.to[k]]);
                }
            }
        }
        for (int b = 0; b < layout.branchCount; b++) {
            double i = exact[b];
            int from = layout.from[b];
            int to = layout.to[b];
            sum[from] += i;
            sum[to] -= i;
            double size = Math.abs(i);
            largest[from] = Math.max(largest[from], size);
            largest[to] = Math.max(largest[to], size);
        }
        worstAmps = 0;
        boolean holds = true;
        for (int k = 0; k < layout.rankCount; k++) {
            double miss = Math.abs(sum[k]);
            worstAmps = Math.max(worstAmps, miss);
            holds &= miss <= absoluteAmps + relative * largest[k];
        }
        return holds;
    }

    /** The largest sum at any node but the chassis at the last check. */
    double worstAmps() {
        return worstAmps;
    }
}
