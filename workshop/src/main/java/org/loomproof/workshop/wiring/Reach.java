package org.loomproof.workshop.wiring;

import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;

/**
 * Where a meter goes to see what one thing does: volts from one node to the other, amps into one pin.
 *
 * @param part the part of the network
 * @param pin the pin that its current is counted into
 * @param from the node of that pin
 * @param to the node at its other end
 */
public record Reach(PartId part, String pin, Node from, Node to) {}
