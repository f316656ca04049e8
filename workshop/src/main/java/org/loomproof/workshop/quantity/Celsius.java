package org.loomproof.workshop.quantity;

import java.util.Locale;
import org.loomproof.workshop.words.ReaderUnits;
import org.loomproof.workshop.words.Written;

/** Temperature in degrees Celsius; whoever reads in degrees Fahrenheit gets those. */
public record Celsius(double value) implements Quantity, Written {

    private static final double FAHRENHEIT_A_DEGREE = 1.8;
    private static final double FAHRENHEIT_OF_ICE = 32;
    private static final double KELVIN_OF_ICE = 273.15;

    public Celsius {
        Quantity.finite(value);
    }

    /** The same above absolute zero. */
    public double kelvin() {
        return value + KELVIN_OF_ICE;
    }

    @Override
    public String symbol() {
        return "°C";
    }

    @Override
    public String toString() {
        return Figures.withPrefix(this);
    }

    @Override
    public String in(Locale reader) {
        return ReaderUnits.of(reader).fahrenheit()
                ? Figures.plain(value * FAHRENHEIT_A_DEGREE + FAHRENHEIT_OF_ICE) + " °F"
                : toString();
    }

    /** The same with its sign before it, as temperatures of weather are written: {@code +20 °C}, {@code −10 °C}. */
    public Written signed() {
        return new Signed(this);
    }

    /** Equal to another of the same temperature, as phrases with it are then equal. */
    private record Signed(Celsius celsius) implements Written {
        @Override
        public String in(Locale reader) {
            String plain = celsius.in(reader);
            return plain.startsWith("-") ? "−" + plain.substring(1) : "+" + plain;
        }

        @Override
        public String toString() {
            return in(Locale.ROOT);
        }
    }
}
