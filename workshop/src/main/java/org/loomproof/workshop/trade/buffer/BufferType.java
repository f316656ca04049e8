package org.loomproof.workshop.trade.buffer;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/**
 * A transistor buffer that can be bought: one input, one output that goes to ground.
 *
 * @param name what the shop calls it
 * @param worksOnGround whether ground at the input switches it; supply otherwise
 * @param input resistance between the input and the pole it rests at
 * @param switchesAt it has switched at this, across the input
 * @param letsGoAt it has let go at this
 * @param closed resistance of the output while switched
 * @param rating what the output may carry
 */
public record BufferType(
        String name, boolean worksOnGround, Ohms input, Volts switchesAt, Volts letsGoAt, Ohms closed, Amps rating) {}
