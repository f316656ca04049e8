package org.loomproof.network.solve;

import java.util.Arrays;

/**
 * The tangents that stand in for all curved branches, of every kind, in flat arrays. Each is trusted unseen within its
 * <em>reach</em>: while the branch's voltage stays there, the tangent is known to miss its curve by less than may be missed.
 */
final class Tangents {
    final int count;

    /** Branch of each curve and the ranks of its ends. */
    final int[] branch;

    final int[] from;
    final int[] to;
    final boolean[] active;

    /** Where each tangent touches its curve. */
    final double[] touchVolts;

    final double[] touchAmps;

    /** Its slope and its current at zero volts, without what leaks beside the curve. */
    final double[] siemens;

    final double[] amps;

    /** A voltage at which it is known by how much each curve differs from its tangent, and that difference. */
    final double[] missVolts;

    final double[] missAmps;

    /** Over how many volts the slope of each curve changes by its own size, at the least; 0 if that says nothing about it. */
    final double[] span;

    final Trust rough;
    final Trust usual;

    private final BranchSums sums;

    Tangents(Layout layout, BranchSums sums, SolverOptions options, double roughVolts) {
        this.sums = sums;
        branch = layout.curved;
        count = branch.length;
        from = Arrays.stream(branch).map(b -> layout.from[b]).toArray();
        to = Arrays.stream(branch).map(b -> layout.to[b]).toArray();
        active = new boolean[count];
        touchVolts = new double[count];
        touchAmps = new double[count];
        siemens = new double[count];
        amps = new double[count];
        missVolts = new double[count];
        missAmps = new double[count];
        span = new double[count];
        rough = Trust.rough(roughVolts, count);
        usual = Trust.usual(count, options);
    }

    /** The branch does not count: nothing is looked at whatever its voltage. */
    void leave(int k) {
        active[k] = false;
        trust(k, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /**
     * Places a tangent. What it is to be trusted for must be said next.
     *
     * @param leak siemens beside the curve
     */
    void place(int k, double volts, double curveAmps, double slope, double leak) {
        missVolts[k] = Double.NaN;
        touchVolts[k] = volts;
        touchAmps[k] = curveAmps;
        siemens[k] = slope;
        amps[k] = curveAmps - slope * volts;
        sums.set(branch[k], slope + leak, amps[k]);
    }

    /**
     * Trusts a tangent about its touching point while what the square of the distance over {@code volts} makes of its slope may be
     * missed, as for a curve whose slope changes by its own size over half as many volts.
     */
    void trustAbout(int k, double volts) {
        span[k] = volts;
        rough.about(k, touchVolts[k], Math.sqrt(volts * rough.mostMissVolts(touchAmps[k], siemens[k])));
        usual.about(k, touchVolts[k], Math.sqrt(volts * usual.mostMissVolts(touchAmps[k], siemens[k])));
    }

    /** Trusts a tangent between two voltages, however close it is to be. */
    void trust(int k, double lowVolts, double highVolts) {
        span[k] = 0;
        rough.between(k, lowVolts, highVolts);
        usual.between(k, lowVolts, highVolts);
    }

    /** What the tangent promises at a voltage, without leak. */
    double curveAmps(int k, double volts) {
        return siemens[k] * volts + amps[k];
    }
}
