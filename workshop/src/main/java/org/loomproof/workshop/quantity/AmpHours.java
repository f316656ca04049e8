package org.loomproof.workshop.quantity;

/** Electric charge in ampere-hours. */
public record AmpHours(double value) implements Quantity {

    public AmpHours {
        Quantity.finite(value);
    }

    @Override
    public String symbol() {
        return "Ah";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
