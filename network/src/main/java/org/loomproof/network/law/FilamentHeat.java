package org.loomproof.network.law;

import org.loomproof.network.part.Lamp;

/**
 * A filament that takes time to warm up. Its temperature x, as a share of that at the rating, follows from the power put in
 * and the power radiated; resistance goes as x^1.2:
 *
 * <pre>
 * R(x) = Rhot x^1.2
 * dx/dt = ((v / Vrated)^2 - (x^5.2 - k) / (1 - k)) / (x^1.2 heatSeconds),   k = (Rcold / Rhot)^(13/3)
 * </pre>
 *
 * At rest x^5.2 = k + (1 - k) (v / Vrated)^2, which is {@link FilamentCurve}. R ~ T^1.2 and radiated power ~ T^4 are laws
 * of tungsten (from memory); the heat held is taken to grow as T.
 *
 * @param hotSiemens 1 / Rhot
 * @param ratedVolts Vrated
 * @param coldFloor k
 * @param heatSeconds heat held at the rating over rated watts
 */
public record FilamentHeat(double hotSiemens, double ratedVolts, double coldFloor, double heatSeconds) {
    private static final double RESISTANCE_EXPONENT = 1.2;
    private static final double BALANCE_EXPONENT = 5.2;
    private static final int MOST_STEPS = 60;

    public static FilamentHeat of(Lamp lamp) {
        return new FilamentHeat(
                1 / lamp.hotOhms(), lamp.ratedVolts(), FilamentCurve.of(lamp).coldFloor(), lamp.heatSeconds());
    }

    /** x of a filament that has long been dark. */
    public double coldShare() {
        return Math.pow(coldFloor, 1 / BALANCE_EXPONENT);
    }

    /** x of a filament that has long been at this voltage. */
    public double steadyShare(double volts) {
        return Math.pow(coldFloor + (1 - coldFloor) * square(volts), 1 / BALANCE_EXPONENT);
    }

    /** Conductance at a temperature x. */
    public double siemens(double share) {
        return hotSiemens * Math.pow(share, -RESISTANCE_EXPONENT);
    }

    /** dx/dt at a temperature and a voltage. */
    public double rate(double share, double volts) {
        return (square(volts) - (Math.pow(share, BALANCE_EXPONENT) - coldFloor) / (1 - coldFloor))
                / (Math.pow(share, RESISTANCE_EXPONENT) * heatSeconds);
    }

    /**
     * The x with x = start + seconds dx/dt(x) at a voltage: an implicit step. The left side less the right rises in x, so
     * there is one.
     */
    public double implicitShare(double start, double seconds, double volts) {
        double low = 0;
        double high = Math.max(start, steadyShare(volts));
        double x = Math.min(Math.max(start, 1e-3), high);
        for (int step = 0; step < MOST_STEPS; step++) {
            double rate = rate(x, volts);
            double miss = x - start - seconds * rate;
            if (miss > 0) {
                high = x;
            } else {
                low = x;
            }
            double radiated = Math.pow(x, BALANCE_EXPONENT - RESISTANCE_EXPONENT - 1)
                    * BALANCE_EXPONENT
                    / ((1 - coldFloor) * heatSeconds);
            double slope = 1 + seconds * (RESISTANCE_EXPONENT * rate / x + radiated);
            double next = slope > 0 ? x - miss / slope : Double.NaN;
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - x) <= 1e-13) {
                return next;
            }
            x = next;
        }
        return x;
    }

    private double square(double volts) {
        double share = volts / ratedVolts;
        return share * share;
    }
}
