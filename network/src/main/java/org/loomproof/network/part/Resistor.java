package org.loomproof.network.part;

import java.util.List;

/**
 * A linear resistance: i = v / R. Also stands for a heater.
 *
 * @param ohms above zero
 */
public record Resistor(PartId id, Node a, Node b, double ohms) implements Part {
    public Resistor {
        Require.positive(ohms, "ohms", id);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
