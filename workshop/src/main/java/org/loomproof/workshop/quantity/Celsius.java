package org.loomproof.workshop.quantity;

/** Temperature in degrees Celsius. */
public record Celsius(double value) implements Quantity {

    public Celsius {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "°C";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
