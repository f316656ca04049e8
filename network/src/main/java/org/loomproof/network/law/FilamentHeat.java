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
 * <p>In the fifth root r = x^(1/5) all powers are whole: x = r^5, x^1.2 = r^6, x^5.2 = r^26.
 */
public final class FilamentHeat {
    private static final double BALANCE_EXPONENT = 5.2;
    private static final int MOST_STEPS = 60;

    /** A root that moves by less is right to the square of that. */
    private static final double NEARLY = 1e-7;

    private final double hotSiemens;
    private final double ratedVolts;
    private final double coldFloor;
    private final double perRatedVolts;
    private final double perHeatSeconds;
    private final double perWarmShare;

    private FilamentHeat(double hotSiemens, double ratedVolts, double coldFloor, double heatSeconds) {
        this.hotSiemens = hotSiemens;
        this.ratedVolts = ratedVolts;
        this.coldFloor = coldFloor;
        perRatedVolts = 1 / ratedVolts;
        perHeatSeconds = 1 / heatSeconds;
        perWarmShare = 1 / (1 - coldFloor);
    }

    /** The heat of a lamp, by its rating, its cold resistance and its heat time. */
    public static FilamentHeat of(Lamp lamp) {
        return new FilamentHeat(
                1 / lamp.hotOhms(), lamp.ratedVolts(), FilamentCurve.of(lamp).coldFloor(), lamp.heatSeconds());
    }

    /** Voltage of the rating. */
    public double ratedVolts() {
        return ratedVolts;
    }

    /** x of a filament that has long been dark. */
    public double coldShare() {
        return Math.pow(coldFloor, 1 / BALANCE_EXPONENT);
    }

    /** x of a filament that has long been at this voltage. */
    public double steadyShare(double volts) {
        return Math.pow(coldFloor + (1 - coldFloor) * square(volts), 1 / BALANCE_EXPONENT);
    }

    /** r of a temperature x. */
    public static double root(double share) {
        return Math.pow(share, 0.2);
    }

    /** x of its root r. */
    public static double share(double root) {
        double squared = root * root;
        return squared * squared * root;
    }

    /** Conductance at a temperature x, by its root. */
    public double siemens(double root) {
        double cubed = root * root * root;
        return hotSiemens / (cubed * cubed);
    }

    /** dx/dt at a temperature x, by its root, and a voltage. */
    public double rate(double root, double volts) {
        double sixth = root * root * root;
        sixth *= sixth;
        double twelfth = sixth * sixth;
        double radiated = (twelfth * twelfth * root * root - coldFloor) * perWarmShare;
        return (square(volts) - radiated) * perHeatSeconds / sixth;
    }

    /**
     * The r whose x is start + seconds dx/dt(x) at a voltage: an implicit step. The left side less the right rises in r, so
     * there is one.
     *
     * @param guess an r near by
     */
    public double implicitRoot(double start, double seconds, double volts, double guess) {
        double low = 0;
        // No filament gets hotter than where it would come to rest: x below the larger of 1 and v / Vrated, and r below
        // that.
        double high = Math.max(start, Math.max(1, Math.abs(volts) * perRatedVolts));
        double root = Math.clamp(guess, 1e-2, high);
        double putIn = square(volts);
        double pace = seconds * perHeatSeconds;
        for (int step = 0; step < MOST_STEPS; step++) {
            double fourth = root * root;
            double sixth = fourth;
            fourth *= fourth;
            sixth *= fourth;
            double twelfth = sixth * sixth;
            double ofRest = twelfth * twelfth * root * perWarmShare;
            double perSixth = 1 / sixth;
            double move = pace * (putIn - ofRest * root + coldFloor * perWarmShare) * perSixth;
            double miss = fourth * root - start - move;
            if (miss > 0) {
                high = root;
            } else {
                low = root;
            }
            double slope = 5 * fourth + pace * 26 * ofRest * perSixth + 6 * move * fourth * root * perSixth;
            double next = slope > 0 ? root - miss / slope : Double.NaN;
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            } else if (Math.abs(next - root) <= NEARLY) {
                return next;
            }
            root = next;
        }
        return root;
    }

    /** di/dv of i = g(x) v where x is that of {@link #implicitRoot} at the voltage. */
    public double slopeSiemens(double root, double seconds, double volts) {
        double fourth = root * root * root * root;
        double sixth = fourth * root * root;
        double perSixth = 1 / sixth;
        double pace = seconds * perHeatSeconds * perSixth;
        double ofRest = sixth * sixth * sixth * sixth * root * perWarmShare;
        double move = pace * (square(volts) - ofRest * root + coldFloor * perWarmShare);
        double slope = 5 * fourth + 26 * pace * ofRest + 6 * move * fourth * root * perSixth;
        double rootPerVolt = 2 * pace * volts * perRatedVolts * perRatedVolts / slope;
        return hotSiemens * perSixth * (1 - 6 * volts * rootPerVolt * fourth * root * perSixth);
    }

    private double square(double volts) {
        double share = volts * perRatedVolts;
        return share * share;
    }
}
