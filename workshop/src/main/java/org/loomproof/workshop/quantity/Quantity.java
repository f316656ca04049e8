package org.loomproof.workshop.quantity;

/** A number with its unit. All values are finite. */
public sealed interface Quantity
        permits AmpHours, Amps, Celsius, Decibels, Metres, Ohms, Seconds, SquareMillimetres, Volts, Watts {

    /** The number, in the unit of {@link #symbol()}. */
    double value();

    /** The unit's symbol as written behind the number. */
    String symbol();

    /** The value, or an error when it is not finite. */
    static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
        return value;
    }
}
