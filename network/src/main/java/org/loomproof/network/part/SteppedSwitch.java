package org.loomproof.network.part;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Two terminals with another resistance between them in each position: a row of buttons on one wire, a sender with steps. At
 * rest it stands in position 0.
 *
 * @param ohmsAt resistance in each position, above zero; empty for an open one
 */
public record SteppedSwitch(PartId id, Node a, Node b, List<OptionalDouble> ohmsAt) implements Part {
    public SteppedSwitch {
        ohmsAt = List.copyOf(ohmsAt);
        Require.that(
                !ohmsAt.isEmpty() && ohmsAt.size() <= SelectorSwitch.MOST_POSITIONS,
                "it needs 1 to " + SelectorSwitch.MOST_POSITIONS + " positions",
                id);
        ohmsAt.forEach(ohms -> ohms.ifPresent(value -> Require.positive(value, "ohms", id)));
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
