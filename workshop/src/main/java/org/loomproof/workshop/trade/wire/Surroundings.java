package org.loomproof.workshop.trade.wire;

import org.loomproof.workshop.quantity.Celsius;

/**
 * Where a conductor runs, as far as it decides what it may carry.
 *
 * @param insulation what its insulation bears for long
 * @param ambient the hottest air around it
 * @param loaded how many conductors of its bundle carry current at the same time, itself included
 */
public record Surroundings(Celsius insulation, Celsius ambient, int loaded) {

    public Surroundings {
        if (loaded < 1) {
            throw new IllegalArgumentException("a conductor that carries nothing needs no size");
        }
    }

    /** The same by itself: how it stands when a fault sends current through it alone. */
    public Surroundings alone() {
        return new Surroundings(insulation, ambient, 1);
    }
}
