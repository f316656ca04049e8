package org.loomproof.workshop.quantity;

import java.util.Locale;

/** How quantities are written for a reader: three significant digits, with milli or kilo where that reads better. */
public final class Figures {

    private Figures() {}

    /** Three significant digits and the unit, with the prefix a technician would use: {@code 148 mA}, {@code 4.7 kΩ}. */
    public static String withPrefix(Quantity quantity) {
        double magnitude = Math.abs(quantity.value());
        return switch (quantity) {
            case Amps a when magnitude < 1e-3 && magnitude > 0 -> plain(a.value() * 1e6) + " µA";
            case Amps a when magnitude < 1 && magnitude > 0 -> plain(a.value() * 1e3) + " mA";
            case Volts v when magnitude < 0.1 && magnitude > 0 -> plain(v.value() * 1e3) + " mV";
            case Ohms o when magnitude < 0.1 && magnitude > 0 -> plain(o.value() * 1e3) + " mΩ";
            case Seconds s when magnitude < 0.1 && magnitude > 0 -> plain(s.value() * 1e3) + " ms";
            case Ohms o when magnitude >= 1e6 -> plain(o.value() / 1e6) + " MΩ";
            case Ohms o when magnitude >= 1e3 -> plain(o.value() / 1e3) + " kΩ";
            default -> plain(quantity.value()) + " " + quantity.symbol();
        };
    }

    /** The same for a bare number and its unit's symbol; a unit that is none of ours is written behind the plain number. */
    public static String withUnit(double value, String symbol) {
        return switch (symbol) {
            case "A" -> withPrefix(new Amps(value));
            case "V" -> withPrefix(new Volts(value));
            case "Ω" -> withPrefix(new Ohms(value));
            case "s" -> withPrefix(new Seconds(value));
            default -> (plain(value) + " " + symbol).stripTrailing();
        };
    }

    /** Volts with as many digits as tell apart what lies so far from each other: {@code 14.24 V} and {@code 14.19 V}. */
    public static String volts(double value, double apart) {
        int decimals = (int) Math.ceil(-Math.log10(Math.abs(apart)));
        return decimals <= 1 || decimals > 6
                ? withPrefix(new Volts(value))
                : String.format(Locale.ROOT, "%." + decimals + "f V", value);
    }

    /** Three significant digits without trailing zeros behind the point: {@code 12.6}, {@code 0.061}, {@code 172}. */
    public static String plain(double value) {
        if (value == 0) {
            return "0";
        }
        double magnitude = Math.abs(value);
        int decimals = Math.max(0, 2 - (int) Math.floor(Math.log10(magnitude)));
        String text = String.format(Locale.ROOT, "%." + Math.min(decimals, 9) + "f", value);
        if (text.contains(".")) {
            text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return "-0".equals(text) ? "0" : text;
    }
}
