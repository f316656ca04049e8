package org.loomproof.network.law;

import org.loomproof.network.part.Lamp;

/**
 * A tungsten filament in thermal balance. Resistance grows as T^1.2 and radiated power as T^4, so power grows as R^(10/3)
 * and R^(13/3) as v squared. With the cold resistance as floor:
 *
 * <pre>R(v) = Rhot (k + (1 - k) (v / Vrated)^2)^(3/13),  k = (Rcold / Rhot)^(13/3)</pre>
 *
 * so that R(0) = Rcold, R(Vrated) = Rhot and, between, i grows as v^(7/13) = v^0.54, the exponent lamp makers print
 * (from memory). Rising everywhere: di/dv = (1 - 6/13 s) / R with s below 1.
 *
 * @param hotSiemens 1 / Rhot
 * @param inverseRatedSquared 1 / Vrated^2
 * @param coldFloor k
 */
public record FilamentCurve(double hotSiemens, double inverseRatedSquared, double coldFloor) {
    /** 3/13, see above. */
    public static final double EXPONENT = 3.0 / 13.0;

    /** The curve through a lamp's rating and its cold resistance. */
    public static FilamentCurve of(Lamp lamp) {
        return new FilamentCurve(
                1 / lamp.hotOhms(),
                1 / (lamp.ratedVolts() * lamp.ratedVolts()),
                Math.pow(lamp.coldToHotOhms(), 1 / EXPONENT));
    }

    /** Current at a voltage. */
    public double amps(double volts) {
        return volts * chordSiemens(volts);
    }

    /** i / v. */
    public double chordSiemens(double volts) {
        return hotSiemens * Math.exp(-EXPONENT * Math.log(base(volts)));
    }

    /** di / dv given the chord i / v at the same voltage. */
    public double slopeSiemens(double volts, double chordSiemens) {
        double base = base(volts);
        return chordSiemens * (1 - 2 * EXPONENT * (base - coldFloor) / base);
    }

    /** The voltage at which the filament has heated enough for both terms under the root to be equal. */
    public double glowVolts() {
        return Math.sqrt(coldFloor / ((1 - coldFloor) * inverseRatedSquared));
    }

    private double base(double volts) {
        return coldFloor + (1 - coldFloor) * volts * volts * inverseRatedSquared;
    }
}
