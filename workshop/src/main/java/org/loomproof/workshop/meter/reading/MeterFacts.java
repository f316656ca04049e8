package org.loomproof.workshop.meter.reading;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * With what it was measured.
 *
 * @param inputOhms input resistance on volts
 * @param percent the first figure of the accuracy ±(% of reading + counts)
 * @param counts the second, in last digits
 * @param pace how soon it shows
 */
public record MeterFacts(double inputOhms, double percent, int counts, Pace pace) {

    /** 10 MΩ, ±(0.5 % + 2): the usual hand-held digital meter. Common practice, no published source. */
    public static final MeterFacts USUAL = new MeterFacts(10e6, 0.5, 2, Pace.USUAL);

    /** Last digit of a 20 V range. Common practice, no published source. */
    private static final double FINEST_DIGIT = 0.01;

    private static final Pattern ACCURACY = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*%\\s*\\+\\s*(\\d+)");
    private static final Pattern INPUT =
            Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*([kM])\\s*(?:ohms?|Ohm|Ω|\u2126)?(?![\\w])");

    /** How soon a meter shows what is there. */
    public enum Pace {
        /** Takes longer than a start lasts, or averages over it: an automatic range, a needle, one value a second. */
        SLOW,
        /** Two or more values a second. */
        USUAL,
        /** Keeps the least and the most, or draws a curve. */
        FAST
    }

    public MeterFacts {
        if (!(inputOhms > 0) || !(percent >= 0) || counts < 0) {
            throw new IllegalArgumentException("no such meter: " + inputOhms + " ohm, " + percent + " %, " + counts);
        }
    }

    /** What the words say of a meter; what they do not say is usual. */
    public static MeterFacts read(String words) {
        String text = words.strip();
        Matcher accuracy = ACCURACY.matcher(text);
        boolean said = accuracy.find();
        double percent = said ? number(accuracy.group(1)) : USUAL.percent;
        int counts = said && accuracy.group(2).length() < 5 ? Integer.parseInt(accuracy.group(2)) : USUAL.counts;
        Matcher input = INPUT.matcher(text);
        double ohms = input.find() ? number(input.group(1)) * (input.group(2).equals("M") ? 1e6 : 1e3) : 0;
        return new MeterFacts(ohms > 0 ? ohms : USUAL.inputOhms, percent, counts, pace(text.toLowerCase(Locale.ROOT)));
    }

    private static Pace pace(String text) {
        if (text.matches(".*\\b(slow|auto|needle|analogue|analog)\\b.*")) {
            return Pace.SLOW;
        }
        return text.matches(".*\\b(fast|peak|min/max|minmax|scope|logger)\\b.*") ? Pace.FAST : Pace.USUAL;
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    /**
     * The largest error of a reading by the accuracy, in the unit of the reading, with half of the last digit written down.
     *
     * @param resolution the last digit that was written down; the meter's own last digit is no coarser than this or 0.01
     */
    public double limit(double value, double resolution) {
        return percent / 100 * Math.abs(value) + counts * Math.min(resolution, FINEST_DIGIT) + resolution / 2;
    }
}
