package org.loomproof.workshop.brief;

import org.loomproof.workshop.quantity.Quantity;

/**
 * A value as far as it is known: a range with the value taken when one is needed, and what it rests on.
 *
 * @param low the least it may be
 * @param typical the value computed with, between low and high
 * @param high the most it may be
 * @param basis what it rests on
 */
public record Figure<Q extends Quantity>(Q low, Q typical, Q high, Basis basis) {

    public Figure {
        if (!(low.value() <= typical.value() && typical.value() <= high.value())) {
            throw new IllegalArgumentException("not in order: " + low + ", " + typical + ", " + high);
        }
    }

    /** A value known exactly. */
    public static <Q extends Quantity> Figure<Q> exactly(Q value, Basis basis) {
        return new Figure<>(value, value, value, basis);
    }

    /** True when low and high differ. */
    public boolean isRange() {
        return low.value() < high.value();
    }

    /** True when nobody stated it and the trade's usual range stands in. */
    public boolean isAssumed() {
        return basis.certainty() == Certainty.ASSUMED;
    }
}
