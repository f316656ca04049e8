package org.loomproof.workshop.wiring;

import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;

/**
 * An input in the network and how it reads its wire.
 *
 * @param part the input
 * @param wire the node it reads
 * @param ground the node it reads against
 * @param lowBelow reads low at or under this many volts
 * @param highAbove reads high at or above this many volts
 */
public record InputReach(PartId part, Node wire, Node ground, double lowBelow, double highAbove) {}
