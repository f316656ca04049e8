package org.loomproof.network.part;

import java.util.List;

/**
 * One contact worked from outside: open at rest, closed when the setting says so. Open means no conductance at all.
 *
 * @param closedOhms resistance of the closed contact, above zero
 */
public record Switch(PartId id, Node a, Node b, double closedOhms) implements Part {
    public Switch {
        Require.positive(closedOhms, "closed ohms", id);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
