package org.loomproof.workshop.quantity;

/** Time in seconds. */
public record Seconds(double value) implements Quantity {

    public Seconds {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "s";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
