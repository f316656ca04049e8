package org.loomproof.network.law;

import org.loomproof.network.part.Drive;

/**
 * A driven field-effect channel by the square law (Shichman and Hodges), stated by its resistance at small currents and the
 * current at which it saturates. With Vs = 2 Ron Ilimit:
 *
 * <pre>
 * v up to Vs:  i = (v / Ron) (1 - v / (2 Vs)) (1 + L |v|)
 * above:       i = Ilimit (1 + L v)
 * </pre>
 *
 * Rising everywhere, smooth, and the same formula backwards.
 *
 * @param onSiemens 1 / Ron
 * @param limitAmps Ilimit
 * @param saturatesAtVolts Vs
 */
public record ChannelCurve(double onSiemens, double limitAmps, double saturatesAtVolts) {
    /** L: a saturated channel gives 0.1 % more per volt, so that its voltage stays defined. */
    public static final double SLOPE_PER_VOLT = 1e-3;

    /** The channel of an output: saturated at its limit from twice the drop that its resistance has there. */
    public static ChannelCurve of(Drive drive) {
        return new ChannelCurve(1 / drive.onOhms(), drive.limitAmps(), 2 * drive.onOhms() * drive.limitAmps());
    }

    /** Current at a voltage. */
    public double amps(double volts) {
        return flatAmps(volts) * (1 + SLOPE_PER_VOLT * Math.abs(volts));
    }

    /** di / dv. */
    public double slopeSiemens(double volts) {
        double flatSlope = volts >= saturatesAtVolts ? 0 : onSiemens * (1 - volts / saturatesAtVolts);
        return flatSlope * (1 + SLOPE_PER_VOLT * Math.abs(volts))
                + flatAmps(volts) * Math.copySign(SLOPE_PER_VOLT, volts);
    }

    private double flatAmps(double volts) {
        return volts >= saturatesAtVolts ? limitAmps : volts * onSiemens * (1 - volts / (2 * saturatesAtVolts));
    }
}
