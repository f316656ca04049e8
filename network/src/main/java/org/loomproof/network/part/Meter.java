package org.loomproof.network.part;

import java.util.List;

/**
 * A voltmeter left in place: loads the network with its input resistance.
 *
 * @param ohms input resistance, above zero
 */
public record Meter(PartId id, Node a, Node b, double ohms) implements Part {
    /** Input resistance of the usual hand-held digital meter: 10 MΩ (common practice, no published source). */
    public static final double USUAL_OHMS = 10e6;

    public Meter {
        Require.positive(ohms, "ohms", id);
    }

    /** A meter of 10 MΩ. */
    public Meter(PartId id, Node a, Node b) {
        this(id, a, b, USUAL_OHMS);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
