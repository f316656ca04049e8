package org.loomproof.network.part;

import java.util.List;

/**
 * A transient suppressor that breaks down alike in both directions. One that clamps in one direction only is a {@link Zener}.
 *
 * @param breakdown the voltage at its test current, in either direction
 */
public record Suppressor(PartId id, Node a, Node b, Breakdown breakdown) implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
