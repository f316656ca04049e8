package org.loomproof.network.solve;

import java.util.Arrays;

/**
 * How far tangents may miss their curves, and for each the voltages between which it is known not to miss by more.
 *
 * <p>A tangent that misses its curve by so many volts is the curve with a source of so many volts in series; and in a network
 * of parts whose current rises with voltage a source moves the voltage between any two nodes by no more than its own.
 */
final class Trust {
    /** By how many volts the misses of all rough tangents together may move any voltage. */
    static final double ROUGH_VOLTS = 0.05;

    private static final double USUAL_MISS_VOLTS = 2e-8;

    /** The miss that is let pass, as a voltage in series with the curve. */
    final double missVolts;

    final double[] low;
    final double[] high;

    private Trust(double missVolts, int curves) {
        this.missVolts = missVolts;
        low = new double[curves];
        high = new double[curves];
        Arrays.fill(low, Double.NEGATIVE_INFINITY);
        Arrays.fill(high, Double.POSITIVE_INFINITY);
    }

    /** Close enough to tell on which side of a threshold a drive is, unless it is within {@link #ROUGH_VOLTS} of it. */
    static Trust rough(int curves) {
        return new Trust(ROUGH_VOLTS / Math.max(curves, 10), curves);
    }

    /** As answers are given. */
    static Trust usual(int curves) {
        return new Trust(USUAL_MISS_VOLTS, curves);
    }

    void between(int curve, double lowVolts, double highVolts) {
        low[curve] = lowVolts;
        high[curve] = highVolts;
    }
}
