package org.loomproof.workshop.trade.diode;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;

/**
 * A rectifier diode.
 *
 * @param name its type number
 * @param reverse the most it blocks, again and again
 * @param average the most it carries for long
 * @param forward the most it drops at {@code average}
 * @param surge the most it bears for one half sine of 8.3 ms
 */
public record DiodeType(String name, Volts reverse, Amps average, Volts forward, Amps surge) {}
