package org.loomproof.network.solve;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Sums the currents of all branches at every node, as the curves give them. The tangents' currents sum to zero by
 * construction but for rounding, so both are looked at: the tangents' sums, and on top of them what each curve differs from
 * its tangent.
 */
final class KirchhoffCheck {
    private final Layout layout;
    private final Factorisation factorisation;
    private final Curves curves;

    /** Branches between two nodes, from a node to the chassis, and from the chassis to a node. */
    private final int[] joining;

    private final int[] draining;
    private final int[] feeding;
    private final double[] sum;
    private double worstAmps;

    KirchhoffCheck(Layout layout, Factorisation factorisation, Curves curves) {
        this.layout = layout;
        this.factorisation = factorisation;
        this.curves = curves;
        int chassis = layout.chassisRank();
        joining = branches(layout, b -> layout.from[b] != chassis && layout.to[b] != chassis);
        draining = branches(layout, b -> layout.from[b] != chassis && layout.to[b] == chassis);
        feeding = branches(layout, b -> layout.from[b] == chassis && layout.to[b] != chassis);
        this.sum = new double[layout.rankCount + 1];
    }

    private static int[] branches(Layout layout, IntPredicate wanted) {
        return IntStream.range(0, layout.branchCount).filter(wanted).toArray();
    }

    /**
     * Tells whether at each node what flows in flows out, to {@code absoluteAmps} plus {@code relative} of the largest
     * current there, and fills in {@code amps}: the currents of the tangents, which lie closer to the answer than a curve
     * read at voltages that are nearly right.
     */
    boolean holds(double[] volts, double[] amps, double absoluteAmps, double relative) {
        addUp(volts, amps);
        worstAmps = 0;
        for (int k = 0; k < layout.rankCount; k++) {
            worstAmps = Math.max(worstAmps, Math.abs(sum[k]));
        }
        return worstAmps <= absoluteAmps || holdsAgainstLargest(amps, absoluteAmps, relative);
    }

    private void addUp(double[] volts, double[] amps) {
        int[] from = layout.from;
        int[] to = layout.to;
        double[] siemens = factorisation.siemens();
        double[] constant = factorisation.amps();
        Arrays.fill(sum, 0);
        for (int b : joining) {
            int a = from[b];
            int z = to[b];
            double i = siemens[b] * (volts[a] - volts[z]) + constant[b];
            amps[b] = i;
            sum[a] += i;
            sum[z] -= i;
        }
        for (int b : draining) {
            int a = from[b];
            double i = siemens[b] * volts[a] + constant[b];
            amps[b] = i;
            sum[a] += i;
        }
        for (int b : feeding) {
            int z = to[b];
            double i = constant[b] - siemens[b] * volts[z];
            amps[b] = i;
            sum[z] -= i;
        }
        curves.addMisses(volts, sum);
    }

    private boolean holdsAgainstLargest(double[] amps, double absoluteAmps, double relative) {
        double[] largest = new double[layout.rankCount + 1];
        for (int b = 0; b < amps.length; b++) {
            double size = Math.abs(amps[b]);
            largest[layout.from[b]] = Math.max(largest[layout.from[b]], size);
            largest[layout.to[b]] = Math.max(largest[layout.to[b]], size);
        }
        for (int k = 0; k < layout.rankCount; k++) {
            if (Math.abs(sum[k]) > absoluteAmps + relative * largest[k]) {
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
