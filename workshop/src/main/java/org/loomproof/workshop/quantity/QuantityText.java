package org.loomproof.workshop.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a quantity as people write it: {@code 12 V}, {@code 4.7 kohm}, {@code 8..12 W}, {@code 8..9..12 W},
 * {@code 800 mA..1.2 A}, {@code 18 AWG}. A unit is never guessed. In a range of two the middle is the typical value.
 */
public final class QuantityText {

    private static final String NUMBER = "[+-]?(?:\\d{1,15}(?:\\.\\d{0,25})?|\\.\\d{1,25})(?:[eE][+-]?\\d{1,3})?";
    private static final Pattern PIECE = Pattern.compile("(" + NUMBER + ")\\s*([^\\d\\s.,+-]\\S*)?");
    private static final Pattern GAUGE =
            Pattern.compile("(?:AWG\\s*)?(?:(\\d{1,2})|([1-4])/0)(?:\\s*AWG)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d),(\\d)");
    private static final int FINEST_GAUGE = 40;

    private QuantityText() {}

    /** What came of reading. */
    public sealed interface Outcome<Q extends Quantity> {

        /** A value or a range. */
        record Read<Q extends Quantity>(Range<Q> range) implements Outcome<Q> {}

        /** No number where one should be. */
        record NotANumber<Q extends Quantity>() implements Outcome<Q> {}

        /** A comma as decimal sign; {@code corrected} is the text with points. */
        record DecimalComma<Q extends Quantity>(String corrected) implements Outcome<Q> {}

        /** A number without its unit; {@code completed} is what was most likely meant. */
        record NoUnit<Q extends Quantity>(String completed) implements Outcome<Q> {}

        /** A unit that does not measure this quantity, or is not known. */
        record WrongUnit<Q extends Quantity>(String unit) implements Outcome<Q> {}

        /** Smaller or larger than anything sensible. */
        record BeyondSense<Q extends Quantity>() implements Outcome<Q> {}

        /** A range whose values do not rise. */
        record NotRising<Q extends Quantity>() implements Outcome<Q> {}
    }

    /** Reads the text as a value or a range of the unit's quantity. */
    public static <Q extends Quantity> Outcome<Q> read(String text, Unit<Q> unit) {
        String trimmed = text.strip();
        Matcher comma = DECIMAL_COMMA.matcher(trimmed);
        if (comma.find()) {
            return new Outcome.DecimalComma<>(comma.replaceAll("$1.$2"));
        }
        String[] pieces = trimmed.split("\\.\\.", -1);
        if (pieces.length > 3 || trimmed.contains("...")) {
            return new Outcome.NotANumber<>();
        }
        boolean gauge = unit == Unit.SQUARE_MILLIMETRES
                && trimmed.toUpperCase(Locale.ROOT).contains("AWG");
        return gauge ? gauges(pieces, unit) : plain(pieces, unit);
    }

    private static <Q extends Quantity> Outcome<Q> plain(String[] pieces, Unit<Q> unit) {
        List<Double> values = new ArrayList<>();
        String unitOfLater = "";
        // From the last piece backwards: in "8..12 W" the 8 takes the unit that stands behind it.
        for (int i = pieces.length - 1; i >= 0; i--) {
            Matcher piece = PIECE.matcher(pieces[i].strip());
            if (!piece.matches()) {
                return new Outcome.NotANumber<>();
            }
            String own = piece.group(2);
            String spelling = own == null ? unitOfLater : own;
            if (spelling.isEmpty()) {
                return new Outcome.NoUnit<>(String.join("..", pieces).strip() + " " + unit.written());
            }
            OptionalDouble scale = unit.scale(spelling);
            if (scale.isEmpty()) {
                return new Outcome.WrongUnit<>(spelling);
            }
            unitOfLater = spelling;
            values.addFirst(scaled(piece.group(1), scale.getAsDouble()));
        }
        return ranged(values, unit);
    }

    /** Divides by whole numbers where the scale is a small fraction, so that {@code 100 mA} is exactly 0.1 A. */
    private static double scaled(String number, double scale) {
        double value = Double.parseDouble(number);
        return scale < 1 ? value / Math.rint(1 / scale) : value * scale;
    }

    private static <Q extends Quantity> Outcome<Q> gauges(String[] pieces, Unit<Q> unit) {
        List<Double> values = new ArrayList<>();
        for (String piece : pieces) {
            Matcher gauge = GAUGE.matcher(piece.strip());
            if (!gauge.matches()) {
                return new Outcome.NotANumber<>();
            }
            int number =
                    gauge.group(1) != null ? Integer.parseInt(gauge.group(1)) : 1 - Integer.parseInt(gauge.group(2));
            if (number > FINEST_GAUGE) {
                return new Outcome.BeyondSense<>();
            }
            values.add(WireGauge.area(number).value());
        }
        return ranged(values, unit);
    }

    private static <Q extends Quantity> Outcome<Q> ranged(List<Double> values, Unit<Q> unit) {
        for (double value : values) {
            if (!unit.admits(value)) {
                return new Outcome.BeyondSense<>();
            }
        }
        double low = values.getFirst();
        double high = values.getLast();
        double typical = values.size() == 3 ? values.get(1) : low + (high - low) / 2;
        if (!(low <= typical && typical <= high)) {
            return new Outcome.NotRising<>();
        }
        return new Outcome.Read<>(new Range<>(unit.of(low), unit.of(typical), unit.of(high)));
    }
}
