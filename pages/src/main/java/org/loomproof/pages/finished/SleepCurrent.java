package org.loomproof.pages.finished;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the sleeping car may draw after the work.
 *
 * @param before milliamps at check-in; empty when none were measured, and then nothing can be compared
 * @param added milliamps that the plan adds at most
 */
public record SleepCurrent(OptionalDouble before, double added) {

    /** What two readings of one current may differ by: 2 % of the reading and 1 mA. Common practice, no published source. */
    private static final double METER_SHARE = 0.02;

    private static final double METER_MILLIAMPS = 1;

    private static final Pattern MILLIAMPS = Pattern.compile("(\\d{1,5}(?:[.,]\\d{1,3})?)\\s*(?:mA)?");

    /** What is compared for a car that drew so much at check-in, as it was typed there. */
    public static SleepCurrent of(String checkIn, double added) {
        return new SleepCurrent(milliamps(checkIn), added);
    }

    /** Milliamps as people type them: {@code 22}, {@code 22,5 mA}. */
    public static OptionalDouble milliamps(String typed) {
        Matcher matcher = MILLIAMPS.matcher(typed.strip());
        return matcher.matches()
                ? OptionalDouble.of(Double.parseDouble(matcher.group(1).replace(',', '.')))
                : OptionalDouble.empty();
    }

    /** The most that may be read. */
    public OptionalDouble most() {
        return before.isPresent()
                ? OptionalDouble.of((before.getAsDouble() + added) * (1 + METER_SHARE) + METER_MILLIAMPS)
                : OptionalDouble.empty();
    }

    /** Whether so much is shown to be no more than it may be; without a reading at check-in nothing is shown. */
    public boolean isKept(double milliamps) {
        return most().isPresent() && milliamps <= most().getAsDouble();
    }
}
