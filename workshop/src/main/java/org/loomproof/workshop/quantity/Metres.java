package org.loomproof.workshop.quantity;

/** Length in metres. */
public record Metres(double value) implements Quantity {

    public Metres {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "m";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
