package org.loomproof.network.part;

import java.util.List;

/**
 * A capacitor behind its series resistance: i = C du/dt, v = u + Rs i. In a steady state it is open: a node that only
 * capacitors join to the rest floats there.
 *
 * @param farads above zero
 * @param seriesOhms at least {@link #LEAST_OHMS}
 */
public record Capacitor(PartId id, Node plus, Node minus, double farads, double seriesOhms) implements Part {
    /** No capacitor has less than a millionth of an ohm with its leads. */
    public static final double LEAST_OHMS = 1e-6;

    public Capacitor {
        Require.positive(farads, "farads", id);
        Require.that(
                seriesOhms >= LEAST_OHMS && Double.isFinite(seriesOhms),
                "series ohms must be at least " + LEAST_OHMS + " and finite, was " + seriesOhms,
                id);
    }

    /** A capacitor of hardly any series resistance. */
    public Capacitor(PartId id, Node plus, Node minus, double farads) {
        this(id, plus, minus, farads, LEAST_OHMS);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("plus", plus), new Pin("minus", minus));
    }
}
