package org.loomproof.workshop.sizing;

import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;

/**
 * How many days a parked car's battery lasts: {@code capacity · share / (24 · current)}.
 *
 * <p>The share is what may be taken before the engine no longer cranks. A car maker's dealer bulletin reckons with 40 % at
 * 25 °C; the trade with half of the rated capacity, and 30 % for a battery over four years old. The trade's figures are
 * common practice with no published source.
 */
public final class StandbyDrain {

    private static final double SHARE = 0.5;
    private static final double SHARE_OF_AN_OLD_BATTERY = 0.3;
    private static final double OLD_AFTER_YEARS = 4;
    private static final double HOURS_A_DAY = 24;

    private StandbyDrain() {}

    /** What may be taken of the rated capacity, by the battery's age in years. */
    public static double usableShare(double ageYears) {
        return ageYears > OLD_AFTER_YEARS ? SHARE_OF_AN_OLD_BATTERY : SHARE;
    }

    /** Days until the usable share is gone; without end when nothing is drawn. */
    public static double days(AmpHours capacity, double usableShare, Amps drawn) {
        return drawn.value() <= 0
                ? Double.POSITIVE_INFINITY
                : capacity.value() * usableShare / (HOURS_A_DAY * drawn.value());
    }
}
