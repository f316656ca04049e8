package org.loomproof.workshop.meter.expected;

import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Situation;

/**
 * What a meter must show in one situation.
 *
 * @param at where the meter is
 * @param when the car's situation, nothing of the kit joined yet
 * @param band the volts against the body
 * @param floats whether nothing holds the wire, so that a meter wanders about the band
 * @param method how the band was found
 */
public record ExpectedReading(Touch at, Situation when, VoltsBand band, boolean floats, Method method) {

    /** How the ends of a band were found. */
    public enum Method {
        /** No figure that is a range has a say. */
        FIXED,
        /** Every corner of all ranges was solved: exact, since a voltage goes one way with each resistance. */
        EVERY_CORNER,
        /** Too many for that: each range by itself, and then all at the ends that lower it and all that raise it. */
        EACH_AND_TOGETHER
    }

    /** The battery's volts that a text names: what they are in such a situation in a sound car. */
    public double batteryVolts() {
        return when.supply().volts().value();
    }

    /** True while the key turns the engine. */
    public boolean isCranking() {
        return when.supply() == SupplyPoint.CRANKING;
    }

    /** Whether a usual meter may show the same here and there. */
    boolean looksLike(ExpectedReading other) {
        return floats == other.floats && band.meets(other.band, batteryVolts());
    }
}
