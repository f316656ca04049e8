package org.loomproof.workshop.quantity;

/** Electric potential difference in volts. */
public record Volts(double value) implements Quantity {

    public Volts {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "V";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
