package org.loomproof.network.part;

import java.util.List;

/**
 * A source that goes to and fro between two voltages. In a steady state it stands at its average; its extremes are reached
 * by stating {@link #lowVolts()} or {@link #highVolts()} in the setting. A run in time follows every edge.
 *
 * @param highVolts voltage during the first part of each period
 * @param lowVolts voltage during the rest
 * @param hertz pulses a second, above zero
 * @param duty the first part's share of the period, 0 to 1
 * @param innerOhms above zero
 */
public record PulsedSource(
        PartId id,
        Node plus,
        Node minus,
        double highVolts,
        double lowVolts,
        double hertz,
        double duty,
        double innerOhms)
        implements Part {
    public PulsedSource {
        Require.finite(highVolts, "high volts", id);
        Require.finite(lowVolts, "low volts", id);
        Require.positive(hertz, "hertz", id);
        Require.that(duty >= 0 && duty <= 1, "duty must lie between 0 and 1, was " + duty, id);
        Require.positive(innerOhms, "inner ohms", id);
    }

    /** The mean over one period. */
    public double averageVolts() {
        return duty * highVolts + (1 - duty) * lowVolts;
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("plus", plus), new Pin("minus", minus));
    }
}
