package org.loomproof.workshop.trade.battery;

import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;

/**
 * Peukert's law: a battery is empty sooner under a large current than its capacity says. Two forms are about; this is the one
 * that gives the rated hours at the rated current, {@code t = H (C / (I H))^k}.
 */
public final class Peukert {

    private Peukert() {}

    /**
     * Hours until it is empty.
     *
     * @param capacity as printed
     * @param ratedHours the hours it is printed for
     * @param exponent 1 for a battery that does not mind; 1.1 to 1.4 for lead
     */
    public static double hours(AmpHours capacity, double ratedHours, double exponent, Amps drawn) {
        return ratedHours * Math.pow(capacity.value() / (drawn.value() * ratedHours), exponent);
    }
}
