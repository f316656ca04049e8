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

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
