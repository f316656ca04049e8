package org.loomproof.workshop.quantity;

import java.util.Locale;
import org.loomproof.workshop.words.ReaderUnits;
import org.loomproof.workshop.words.ReaderUnits.Sizes;
import org.loomproof.workshop.words.Written;

/**
 * Conductor cross-section in square millimetres. It is written as it is bought, metric or gauge. Whoever reads the other measure gets
 * that behind it: of a gauge its area, and of a metric size the thinnest gauge sold that is no thinner.
 */
public record SquareMillimetres(double value) implements Quantity, Written {

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

    @Override
    public String in(Locale reader) {
        String bought = WireGauge.name(this).orElseGet(this::toString);
        return ReaderUnits.of(reader).sizes().map(sizes -> bought + in(sizes)).orElse(bought);
    }

    private String in(Sizes sizes) {
        boolean isGauge = WireGauge.name(this).isPresent();
        return switch (sizes) {
            case MM2 -> isGauge ? " (" + this + ")" : "";
            case AWG ->
                isGauge
                        ? ""
                        : WireGauge.noThinnerThan(this)
                                .map(name -> " (" + name + ")")
                                .orElse("");
        };
    }
}
