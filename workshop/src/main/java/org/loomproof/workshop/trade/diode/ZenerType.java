package org.loomproof.workshop.trade.diode;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/**
 * A zener diode.
 *
 * @param name its type number
 * @param volts printed on it, reached at {@code test}
 * @param test the current at which it is measured
 * @param slope how it rises above that, at the most
 * @param carries the most for long
 */
public record ZenerType(String name, Volts volts, Amps test, Ohms slope, Amps carries) {

    /** How far one is off what is printed on it: the suffix B. */
    public static final double TOLERANCE = 0.05;

    /** The most volts across one that carries the current backwards. */
    public Volts most(Amps current) {
        return new Volts(volts.value() * (1 + TOLERANCE) + slope.value() * Math.max(0, current.value() - test.value()));
    }
}
