package org.loomproof.workshop.quantity;

/**
 * Where a value lies, as far as it is known.
 *
 * @param low the least it may be
 * @param typical the value computed with, between low and high
 * @param high the most it may be
 */
public record Range<Q extends Quantity>(Q low, Q typical, Q high) {

    public Range {
        if (!(low.value() <= typical.value() && typical.value() <= high.value())) {
            throw new IllegalArgumentException("not in order: " + low + ", " + typical + ", " + high);
        }
    }
}
