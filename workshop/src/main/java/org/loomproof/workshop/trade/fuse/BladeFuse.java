package org.loomproof.workshop.trade.fuse;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;

/**
 * A blade fuse.
 *
 * @param rating what is printed on it
 * @param coldResistance unloaded, at 20 °C
 * @param body the colour of its body
 */
public record BladeFuse(Amps rating, Ohms coldResistance, String body) {}
