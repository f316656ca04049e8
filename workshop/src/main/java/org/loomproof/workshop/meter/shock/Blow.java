package org.loomproof.workshop.meter.shock;

import org.loomproof.workshop.quantity.Metres;

/**
 * A mass with a soft face, dropped or swung onto a marked spot of the car.
 *
 * @param setting of the sensor: its own scale, more is more sensitive
 * @param kilograms the mass
 * @param height how far it falls
 * @param noticed whether the sensor answered
 */
public record Blow(double setting, double kilograms, Metres height, boolean noticed) {

    /** Standard gravity, m/s² (CGPM 1901). */
    private static final double GRAVITY = 9.80665;

    public Blow {
        if (!(kilograms > 0) || !(height.value() > 0)) {
            throw new IllegalArgumentException("a blow has a mass and a height: " + kilograms + " kg, " + height);
        }
    }

    /** What it brings to the spot, in joules: m g h. */
    public double joules() {
        return kilograms * GRAVITY * height.value();
    }
}
