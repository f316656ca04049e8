package org.loomproof.workshop.quantity;

/** Electric resistance in ohms. */
public record Ohms(double value) implements Quantity {

    public Ohms {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "Ω";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
