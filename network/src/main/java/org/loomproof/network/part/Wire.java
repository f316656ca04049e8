package org.loomproof.network.part;

import java.util.List;

/**
 * A piece of conductor with its joints.
 *
 * @param ohms resistance of the whole length, above zero
 */
public record Wire(PartId id, Node a, Node b, double ohms) implements Part {
    public Wire {
        Require.positive(ohms, "ohms", id);
    }

    /**
     * A length of solid copper without joints, see {@link Copper}. Stranded cable has less copper than its nominal size says.
     */
    public static Wire copper(PartId id, Node a, Node b, double metres, double squareMillimetres, double celsius) {
        return new Wire(id, a, b, Copper.ohms(metres, squareMillimetres, celsius));
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
