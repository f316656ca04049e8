package org.loomproof.workshop.wiring;

import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Quantity;

/**
 * A figure of the brief that is known as a range only and has a say in the network or in what is read from it.
 *
 * @param key the name of its owner and what it is, such as {@code starter-solenoid resistance}; unique within a brief
 * @param figure the range
 */
public record RangedFigure(String key, Figure<? extends Quantity> figure) {}
