package org.loomproof.workshop.wiring;

import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;

/**
 * Where a meter goes to see what one thing does: volts from one node to the other, amps into one pin.
 *
 * @param part the part of the network
 * @param pin the pin that its current is counted into
 * @param isFirstPin whether that is the part's first pin, which is the quickest to read
 * @param from the node of that pin
 * @param to the node at its other end
 */
public record Reach(PartId part, String pin, boolean isFirstPin, Node from, Node to) {

    /** The thing as a whole, reached at its first two pins. */
    public static Reach across(Part part) {
        Pin first = part.pins().get(0);
        return new Reach(
                part.id(), first.name(), true, first.node(), part.pins().get(1).node());
    }

    /** The same part, its current counted into another pin. */
    public Reach into(String otherPin) {
        return new Reach(part, otherPin, otherPin.equals(pin) && isFirstPin, from, to);
    }

    /** The same part and pin, with volts against another node. */
    public Reach against(Node other) {
        return new Reach(part, pin, isFirstPin, from, other);
    }
}
