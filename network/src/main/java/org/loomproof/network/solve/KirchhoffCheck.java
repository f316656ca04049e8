package org.loomproof.network.solve;

import java.util.Arrays;

/**
 * Sums the currents of all branches at every node, as the curves give them. The tangents' currents sum to zero by
 * construction but for rounding, so both are looked at: the tangents' sums, and on top of them what each curve differs from
 * its tangent.
 */
final class KirchhoffCheck {
    private final Layout layout;
    private final Factorisation factorisation;
    private final Curves curves;
    private final double[] sum;
    private final double[] largest;
    private double worstAmps;

    KirchhoffCheck(Layout layout, Factorisation factorisation, Curves curves) {
        this.layout = layout;
        this.factorisation = factorisation;
        this.curves = curves;
        this.sum = new double[layout.rankCount + 1];
        this.largest = new double[layout.rankCount + 1];
    }

    /**
     * Tells whether at each node what flows in flows out, to {@code absoluteAmps} plus {@code relative} of the largest
     * current there, and fills in {@code amps}: the currents of the tangents, which lie closer to the answer than a curve
     * read at voltages that are nearly right.
     */
    boolean holds(double[] volts, double[] amps, double absoluteAmps, double relative) {
        Arrays.fill(sum, 0);
        Arrays.fill(largest, 0);
        int[] from = layout.from;
        int[] to = layout.to;
        factorisation.amps(volts, from, to, amps);
        for (int b = 0; b < amps.length; b++) {
            double i = amps[b];
            double size = Math.abs(i);
            int a = from[b];
            int z = to[b];
            sum[a] += i;
            sum[z] -= i;
            largest[a] = Math.max(largest[a], size);
            largest[z] = Math.max(largest[z], size);
        }
        for (CurvedBranches kind : curves.kinds) {
            for (int k = 0; k < kind.count; k++) {
                if (kind.active[k]) {
                    double miss = kind.missAmps(k, volts[kind.from[k]] - volts[kind.to[k]]);
                    sum[kind.from[k]] += miss;
                    sum[kind.to[k]] -= miss;
                }
            }
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
