package org.loomproof.workshop.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.workshop.quantity.QuantityText.Outcome;

/**
 * Writes quantities so that {@link QuantityText} reads exactly the same values back: in milli- or kilo-units where that is
 * shorter, as a gauge where the area is one, and never rounded.
 */
public final class QuantityWriter {

    /** Longest number that is still pleasant to read; a longer one is tried in the other units first. */
    private static final int SHORT_NUMBER = 6;

    private QuantityWriter() {}

    /** One value with its unit, such as {@code 148 mA}. */
    public static String write(Quantity value) {
        return write(value, value, value);
    }

    /** A range, such as {@code 8..12 W}, or {@code 8..9..12 W} where the typical value is not in the middle. */
    public static String write(Quantity low, Quantity typical, Quantity high) {
        Unit<?> unit = Unit.of(low);
        List<Double> values = List.of(low.value(), typical.value(), high.value());
        for (String spelling : spellings(unit)) {
            Optional<String> text = inUnit(values, unit, spelling, true);
            if (text.isPresent()) {
                return text.get();
            }
        }
        return (unit == Unit.SQUARE_MILLIMETRES ? gauge(values) : Optional.<String>empty())
                .or(() -> inUnit(values, unit, unit.written(), false))
                .orElseThrow();
    }

    private static List<String> spellings(Unit<?> unit) {
        return switch (unit.written()) {
            case "ohm" -> List.of("ohm", "mohm", "kohm", "Mohm");
            case "V", "A" -> List.of(unit.written(), "m" + unit.written());
            default -> List.of(unit.written());
        };
    }

    /** The range with its numbers in that spelling of the unit, if they are short enough and read back as the same. */
    private static Optional<String> inUnit(List<Double> values, Unit<?> unit, String spelling, boolean onlyNice) {
        double scale = unit.scale(spelling).orElseThrow();
        List<String> numbers =
                values.stream().map(value -> number(value, scale)).toList();
        if (onlyNice && numbers.stream().anyMatch(number -> isClumsy(number, unit, scale))) {
            return Optional.empty();
        }
        String behind = " " + spelling;
        String low = numbers.getFirst();
        String high = numbers.getLast();
        List<String> candidates =
                List.of(high + behind, low + ".." + high + behind, String.join("..", numbers) + behind);
        return candidates.stream().filter(text -> readsAs(text, unit, values)).findFirst();
    }

    private static boolean readsAs(String text, Unit<?> unit, List<Double> values) {
        return QuantityText.read(text, unit) instanceof Outcome.Read<?>(Range<?> range)
                && values.equals(List.of(
                        range.low().value(),
                        range.typical().value(),
                        range.high().value()));
    }

    private static String number(double value, double scale) {
        if (scale == 1) {
            return digits(value);
        }
        double scaled = scale < 1 ? value * Math.rint(1 / scale) : value / scale;
        // Multiplying may leave a last digit that was not there before: 0.148 A times 1000.
        double rounded = Double.parseDouble(String.format(Locale.ROOT, "%.12g", scaled));
        return digits(Math.abs(rounded - scaled) <= Math.ulp(scaled) * 4 ? rounded : scaled);
    }

    private static String digits(double number) {
        String plain = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        return plain.length() <= 20 ? plain : Double.toString(number);
    }

    /** True for a number that another prefix may show better: long, small (for a current below 1), or 1000 and more. */
    private static boolean isClumsy(String number, Unit<?> unit, double scale) {
        if (number.length() > SHORT_NUMBER) {
            return true;
        }
        double size = Math.abs(Double.parseDouble(number));
        double least = unit == Unit.AMPS ? 1 : 0.1;
        return size != 0 && (size < least || (size >= 1000 && scale < 1e6));
    }

    private static Optional<String> gauge(List<Double> values) {
        return WireGauge.name(new SquareMillimetres(values.getFirst()))
                .filter(text -> readsAs(text, Unit.SQUARE_MILLIMETRES, values));
    }
}
