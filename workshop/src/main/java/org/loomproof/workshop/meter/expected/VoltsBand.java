package org.loomproof.workshop.meter.expected;

import org.loomproof.workshop.meter.reading.MeterFacts;

/**
 * The least and the most that a meter may show, each on a straight line over the battery's volts: exact where parts are
 * straight; what lamps and diodes bend lies below the last digit of a meter of 10 MΩ.
 *
 * @param lowAt10 the least with 10 V at the battery's posts, in volts
 * @param lowAt14 the least with 14 V
 * @param highAt10 the most with 10 V
 * @param highAt14 the most with 14 V
 */
public record VoltsBand(double lowAt10, double lowAt14, double highAt10, double highAt14) {

    /** Written figures end here. */
    private static final double DIGIT = 0.01;

    static final double FEW_VOLTS = 10;
    static final double MANY_VOLTS = 14;

    /** A single line. */
    static VoltsBand at(double at10, double at14) {
        return new VoltsBand(at10, at14, at10, at14);
    }

    /** A band that holds both. */
    VoltsBand or(VoltsBand other) {
        return new VoltsBand(
                Math.min(lowAt10, other.lowAt10),
                Math.min(lowAt14, other.lowAt14),
                Math.max(highAt10, other.highAt10),
                Math.max(highAt14, other.highAt14));
    }

    /** The least that a usual meter may show, its own error included, with that battery. */
    public double low(double batteryVolts) {
        double volts = line(lowAt10, lowAt14, batteryVolts);
        return volts - MeterFacts.USUAL.limit(volts, DIGIT);
    }

    /** The most that a usual meter may show, its own error included, with that battery. */
    public double high(double batteryVolts) {
        double volts = line(highAt10, highAt14, batteryVolts);
        return volts + MeterFacts.USUAL.limit(volts, DIGIT);
    }

    private static double line(double at10, double at14, double batteryVolts) {
        return at10 + (at14 - at10) * (batteryVolts - FEW_VOLTS) / (MANY_VOLTS - FEW_VOLTS);
    }

    /** Whether a usual meter may show one value for both, with that battery. */
    boolean meets(VoltsBand other, double batteryVolts) {
        return low(batteryVolts) <= other.high(batteryVolts) && other.low(batteryVolts) <= high(batteryVolts);
    }

    /** Whether all of it stays put while the battery's volts change. */
    boolean isFirm() {
        return Math.abs(lowAt14 - lowAt10) < DIGIT && Math.abs(highAt14 - highAt10) < DIGIT;
    }

    /** Whether all of it moves with the battery, volt by volt: it lies a fixed drop under the post. */
    boolean followsTheBattery() {
        double all = MANY_VOLTS - FEW_VOLTS;
        return lowAt14 - lowAt10 > FOLLOWS * all && highAt14 - highAt10 > FOLLOWS * all;
    }

    private static final double FOLLOWS = 0.97;
}
