package org.loomproof.network.law;

import org.loomproof.network.part.DiodeModel;

/**
 * The Shockley diode equation with series resistance: i = Is (exp(u / (n Vt)) - 1), v = u + Rs i, and beside both a leak
 * {@link #LEAK_SIEMENS} across the terminals. Rising everywhere, so a network of it has one answer.
 *
 * @param saturationAmps Is
 * @param slopeVolts n Vt
 * @param seriesOhms Rs
 */
public record ShockleyCurve(double saturationAmps, double slopeVolts, double seriesOhms) {
    /** 1 TΩ: less than any insulation, so that a node behind a blocked diode still has a voltage. */
    public static final double LEAK_SIEMENS = 1e-12;

    /** The curve of a diode's junction. */
    public static ShockleyCurve of(DiodeModel model) {
        return new ShockleyCurve(model.saturationAmps(), model.slopeVolts(), model.seriesOhms());
    }

    /** The junction that drops {@code volts} at {@code amps}, at 27 °C, emission 1, without series resistance. */
    public static ShockleyCurve through(double volts, double amps) {
        double slopeVolts = DiodeModel.THERMAL_VOLTS;
        return new ShockleyCurve(amps / Math.expm1(volts / slopeVolts), slopeVolts, 0);
    }

    /** Current at a junction voltage u, without the leak. */
    public double amps(double junctionVolts) {
        return saturationAmps * Math.expm1(junctionVolts / slopeVolts);
    }

    /** di / du at a current, without the leak. */
    public double slopeSiemens(double amps) {
        return Math.max(0, amps + saturationAmps) / slopeVolts;
    }

    /** Junction voltage u at a current above -Is. */
    public double junctionVolts(double amps) {
        return slopeVolts * Math.log1p(amps / saturationAmps);
    }
}
