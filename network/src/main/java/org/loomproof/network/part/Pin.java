package org.loomproof.network.part;

/**
 * One terminal of a part and the node it is joined to.
 *
 * @param name the terminal's name within its part, for instance the anode of a diode
 * @param node where it is joined
 */
public record Pin(String name, Node node) {
    public Pin {
        Require.named(name, "pin");
    }
}
