package org.loomproof.workshop.quantity;

/** Sound level in decibels, A-weighted. */
public record Decibels(double value) implements Quantity {

    public Decibels {
        Quantity.finite(value);
    }

    /**
     * The level at another distance from the same small source in the open: {@code L - 20 log10(there / here)}.
     *
     * @param here how far away this level was measured
     * @param there how far away it is wanted
     */
    public Decibels at(Metres here, Metres there) {
        return new Decibels(value - 20 * Math.log10(there.value() / here.value()));
    }

    @Override
    public String symbol() {
        return "dB";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }
}
