package org.loomproof.workshop.quantity;

/** Electric current in amperes. */
public record Amps(double value) implements Quantity {

    public Amps {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "A";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
