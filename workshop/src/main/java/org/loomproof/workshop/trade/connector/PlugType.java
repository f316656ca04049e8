package org.loomproof.workshop.trade.connector;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.SquareMillimetres;

/**
 * A connector of two halves with their contacts.
 *
 * @param contactMillimetres how wide its blades are
 * @param poles how many wires it takes
 * @param carries the most through one contact for long
 * @param thickest the thickest conductor that a contact takes
 */
public record PlugType(double contactMillimetres, int poles, Amps carries, SquareMillimetres thickest) {}
