package org.loomproof.workshop.meter.shock;

import org.loomproof.workshop.quantity.Metres;

/**
 * A mass with a soft face that falls or swings onto a marked spot of the car.
 *
 * @param kilograms the mass
 * @param height how far it falls
 */
public record Knock(double kilograms, Metres height) {

    /** Standard gravity, m/s² (CGPM 1901). */
    private static final double GRAVITY = 9.80665;

    public Knock {
        if (!(kilograms > 0) || !(height.value() > 0)) {
            throw new IllegalArgumentException("a blow has a mass and a height: " + kilograms + " kg, " + height);
        }
    }

    /** What it brings to the spot, in joules: m g h. */
    public double joules() {
        return kilograms * GRAVITY * height.value();
    }

    /** The same mass from the height at which it brings that many joules. */
    public Knock bringing(double joules) {
        return new Knock(kilograms, new Metres(joules / kilograms / GRAVITY));
    }
}
