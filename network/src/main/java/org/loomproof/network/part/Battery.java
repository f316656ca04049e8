package org.loomproof.network.part;

import java.util.List;

/**
 * A source with an inner resistance: v(plus) - v(minus) = emf - i * r, i out of plus.
 *
 * @param emfVolts open-circuit voltage, any sign; the setting may state another
 * @param innerOhms above zero
 */
public record Battery(PartId id, Node plus, Node minus, double emfVolts, double innerOhms) implements Part {
    public Battery {
        Require.finite(emfVolts, "emf", id);
        Require.positive(innerOhms, "inner ohms", id);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("plus", plus), new Pin("minus", minus));
    }
}
