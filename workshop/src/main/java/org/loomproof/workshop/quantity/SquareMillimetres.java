package org.loomproof.workshop.quantity;

/** Conductor cross-section in square millimetres. */
public record SquareMillimetres(double value) implements Quantity {

    public SquareMillimetres {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "mm²";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
