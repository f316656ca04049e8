package org.loomproof.workshop.quantity;

/** Power in watts. */
public record Watts(double value) implements Quantity {

    public Watts {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "W";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
