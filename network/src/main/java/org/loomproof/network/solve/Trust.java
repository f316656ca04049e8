package org.loomproof.network.solve;

import java.util.Arrays;

/**
 * How far tangents may miss their curves, and for each the voltages between which it is known not to miss by more.
 *
 * <p>A tangent that misses its curve by so many volts is the curve with a source of so many volts in series; and in a network
 * of parts whose current rises with voltage a source moves the voltage between any two nodes by no more than its own.
 */
final class Trust {
    /** By how many volts the misses of all tangents together may move any voltage while contacts are settled. */
    static final double ROUGH_VOLTS = 0.05;

    /** What the tangents of answers may miss once they are looked at closely, as a voltage in series with the curve. */
    static final double USUAL_MISS_VOLTS = 2e-8;

    private static final double USUAL_ERROR_VOLTS = 1e-7;

    /** Part of what Kirchhoff's law is checked to that one curve may miss; few nodes have more than two curves that move. */
    private static final double PART_OF_CHECK = 1.0 / 3;

    /** By how much the miss of one curve may move any voltage. */
    final double errorVolts;

    /** The miss that is let pass as a current, and that as a part of the curve's own. */
    private final double missAmps;

    private final double missPart;

    final double[] low;
    final double[] high;

    private Trust(double errorVolts, double missAmps, double missPart, int curves) {
        this.errorVolts = errorVolts;
        this.missAmps = missAmps;
        this.missPart = missPart;
        low = new double[curves];
        high = new double[curves];
        Arrays.fill(low, Double.NEGATIVE_INFINITY);
        Arrays.fill(high, Double.POSITIVE_INFINITY);
    }

    /**
     * Close enough to tell on which side of a threshold a drive is, unless it is within so many volts of it.
     *
     * @param volts by how much the misses of all tangents together may move any voltage
     */
    static Trust rough(double volts, int curves) {
        return new Trust(volts / Math.max(curves, 10), Double.POSITIVE_INFINITY, 0, curves);
    }

    /** As answers are given, which must also pass the check of Kirchhoff's law. */
    static Trust usual(int curves, SolverOptions options) {
        return new Trust(
                USUAL_ERROR_VOLTS,
                PART_OF_CHECK * options.kirchhoffAmps(),
                PART_OF_CHECK * options.kirchhoffPart(),
                curves);
    }

    /** The miss that is let pass as a current where the tangent touches its curve at so many amps. */
    double mostMissAmps(double touchAmps) {
        return missAmps + missPart * Math.abs(touchAmps);
    }

    /** The miss that is let pass, as a voltage in series with a curve of this slope. */
    double mostMissVolts(double touchAmps, double siemens) {
        return Math.min(errorVolts, mostMissAmps(touchAmps) / siemens);
    }

    void about(int curve, double volts, double reachVolts) {
        between(curve, volts - reachVolts, volts + reachVolts);
    }

    void between(int curve, double lowVolts, double highVolts) {
        low[curve] = lowVolts;
        high[curve] = highVolts;
    }
}
