package org.loomproof.workshop.meter.reading;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the two cells of a value and its unit as people write them beside a car. */
final class ShownReader {

    private static final String NUMBER = "[+-]?\\d{1,12}(?:[.,]\\d{1,9})?|[+-]?[.,]\\d{1,9}";
    private static final Pattern STEADY = Pattern.compile("([~≈<]?)\\s*(" + NUMBER + ")\\s*([a-zA-ZΩ\u2126µ~ ]*)");
    private static final Pattern MOVING = Pattern.compile("(" + NUMBER
            + ")\\s*([a-zA-ZΩ\u2126µ]*)\\s*(?:\\.\\.\\.?|…|–| to |-)\\s*(" + NUMBER + ")\\s*([a-zA-ZΩ\u2126µ~ ]*)");
    private static final Pattern AC =
            Pattern.compile("ac\\b\\s*(.*)|(.*?)\\s*(?:v\\s*ac|ac|v~)", Pattern.CASE_INSENSITIVE);
    private static final Set<String> OVERLOAD = Set.of("ol", "o.l", "0l", "0.l", "o.l.", "inf", "∞", "over", "open");
    private static final Set<String> FLOATING = Set.of("floating", "float", "floats", "wanders", "wandering");
    private static final Set<String> NOT_TAKEN = Set.of("", "-", "--", "n/a", "na", "not taken", "none", "?");

    /** A rough value is as good as five of its last digits. Common practice, no published source. */
    private static final int ROUGH_COUNTS = 5;

    private record Scale(Measured measured, double factor) {}

    private static final Map<String, Scale> UNITS = Map.ofEntries(
            Map.entry("v", new Scale(Measured.VOLTS, 1)),
            Map.entry("volt", new Scale(Measured.VOLTS, 1)),
            Map.entry("volts", new Scale(Measured.VOLTS, 1)),
            Map.entry("v dc", new Scale(Measured.VOLTS, 1)),
            Map.entry("vdc", new Scale(Measured.VOLTS, 1)),
            Map.entry("v ac", new Scale(Measured.VOLTS, 1)),
            Map.entry("vac", new Scale(Measured.VOLTS, 1)),
            Map.entry("v~", new Scale(Measured.VOLTS, 1)),
            Map.entry("mv", new Scale(Measured.VOLTS, 1e-3)),
            Map.entry("ohm", new Scale(Measured.OHMS, 1)),
            Map.entry("ohms", new Scale(Measured.OHMS, 1)),
            Map.entry("ω", new Scale(Measured.OHMS, 1)),
            Map.entry("k", new Scale(Measured.OHMS, 1e3)),
            Map.entry("kohm", new Scale(Measured.OHMS, 1e3)),
            Map.entry("kω", new Scale(Measured.OHMS, 1e3)),
            Map.entry("a", new Scale(Measured.AMPS, 1)),
            Map.entry("amp", new Scale(Measured.AMPS, 1)),
            Map.entry("amps", new Scale(Measured.AMPS, 1)),
            Map.entry("ma", new Scale(Measured.AMPS, 1e-3)),
            Map.entry("ua", new Scale(Measured.AMPS, 1e-6)),
            Map.entry("µa", new Scale(Measured.AMPS, 1e-6)));

    private ShownReader() {}

    /** What came of reading. */
    sealed interface Outcome {
        record Read(Measured measured, Shown shown) implements Outcome {}

        record NotAValue() implements Outcome {}

        record NoUnit() implements Outcome {}

        record WrongUnit(String unit) implements Outcome {}

        record BeyondSense() implements Outcome {}
    }

    /** What the cells say; a unit behind the value counts before the one in the cell of its own. */
    static Outcome read(String value, String unit) {
        String text = value.strip();
        String plain = text.toLowerCase(Locale.ROOT);
        if (NOT_TAKEN.contains(plain)) {
            return words(unit, new Shown.NotTaken());
        }
        if (FLOATING.contains(plain)) {
            return words(unit, new Shown.Floating());
        }
        if (OVERLOAD.contains(plain)) {
            return words(unit, new Shown.Overload());
        }
        Matcher ac = AC.matcher(text);
        boolean alternating = ac.matches();
        if (alternating) {
            text = ac.group(1) == null ? ac.group(2) : ac.group(1);
        }
        alternating |= unit.strip().toLowerCase(Locale.ROOT).matches("v\\s*ac|v~");
        Matcher steady = STEADY.matcher(text.strip());
        if (steady.matches()) {
            return steady(steady, unit, alternating);
        }
        Matcher moving = MOVING.matcher(text.strip());
        return moving.matches() && !alternating ? moving(moving, unit) : new Outcome.NotAValue();
    }

    private static Outcome words(String unit, Shown shown) {
        String said = unit.strip();
        Optional<Scale> scale = scale(said);
        if (scale.isEmpty() && !said.isEmpty()) {
            return new Outcome.WrongUnit(said);
        }
        return new Outcome.Read(scale.map(Scale::measured).orElse(Measured.VOLTS), shown);
    }

    private static Outcome steady(Matcher found, String unit, boolean alternating) {
        return scaled(found.group(3), unit, scale -> {
            double value = number(found.group(2)) * scale.factor;
            double digit = lastDigit(found.group(2)) * scale.factor;
            boolean rough = !found.group(1).isEmpty();
            if (alternating) {
                return new Shown.Alternating(value);
            }
            boolean below = found.group(1).equals("<");
            return below && value > 0
                    ? new Shown.Moving(0, value)
                    : new Shown.Steady(value, rough ? ROUGH_COUNTS * Math.min(digit, 0.1 * scale.factor) : digit);
        });
    }

    private static Outcome moving(Matcher found, String unit) {
        String own = found.group(4).isBlank() ? found.group(2) : found.group(4);
        return scaled(own, unit, scale -> {
            double one = number(found.group(1)) * scale.factor;
            double other = number(found.group(3)) * scale.factor;
            return new Shown.Moving(Math.min(one, other), Math.max(one, other));
        });
    }

    private static Outcome scaled(String own, String unit, Function<Scale, Shown> made) {
        String said = own.isBlank() ? unit.strip() : own.strip();
        if (said.isEmpty()) {
            return new Outcome.NoUnit();
        }
        Optional<Scale> scale = scale(said);
        if (scale.isEmpty()) {
            return new Outcome.WrongUnit(said);
        }
        Shown shown = made.apply(scale.get());
        return isSensible(shown, scale.get().measured)
                ? new Outcome.Read(scale.get().measured, shown)
                : new Outcome.BeyondSense();
    }

    /** Milli and mega differ by the size of their letter only. */
    private static Optional<Scale> scale(String unit) {
        if (unit.matches("M(ohms?|Ohms?|Ω|\u2126)?")) {
            return Optional.of(new Scale(Measured.OHMS, 1e6));
        }
        if (unit.matches("m(ohms?|Ohms?|Ω|\u2126)")) {
            return Optional.of(new Scale(Measured.OHMS, 1e-3));
        }
        return Optional.ofNullable(UNITS.get(unit.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ")));
    }

    /** No car wire shows more than a spark's kilovolt or less than a reversed battery; ohms are never below zero. */
    private static boolean isSensible(Shown shown, Measured measured) {
        return switch (shown) {
            case Shown.Steady s -> isSensible(s.value(), measured);
            case Shown.Moving m -> isSensible(m.low(), measured) && isSensible(m.high(), measured);
            case Shown.Alternating a -> measured == Measured.VOLTS && a.rms() >= 0 && a.rms() <= 60;
            case Shown.Floating f -> true;
            case Shown.Overload o -> true;
            case Shown.NotTaken n -> true;
        };
    }

    private static boolean isSensible(double value, Measured measured) {
        return switch (measured) {
            case VOLTS -> value >= -30 && value <= 60;
            case OHMS -> value >= -1 && value <= 1e9;
            case AMPS -> value >= -1000 && value <= 1000;
        };
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    private static double lastDigit(String text) {
        int point = Math.max(text.indexOf('.'), text.indexOf(','));
        return point < 0 ? 1 : Math.pow(10, -(text.length() - point - 1));
    }
}
