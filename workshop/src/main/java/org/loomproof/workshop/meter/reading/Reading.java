package org.loomproof.workshop.meter.reading;

import java.util.OptionalDouble;
import org.loomproof.workshop.problem.Place;

/**
 * One line of a file of readings.
 *
 * @param at the line
 * @param wire what the technician calls the wire
 * @param step what the car was doing
 * @param measured volts, ohms or amps
 * @param shown what the meter showed, in V, Ω or A
 * @param batteryVolts at the battery's posts at that moment, when known
 * @param meter with what it was measured
 * @param place where the wire was found, as written
 * @param colour the wire's colour, as written
 * @param note free text
 */
public record Reading(
        Place at,
        String wire,
        Step step,
        Measured measured,
        Shown shown,
        OptionalDouble batteryVolts,
        MeterFacts meter,
        String place,
        String colour,
        String note) {

    /** The name of the wire whose readings are the battery's own. */
    public static final String BATTERY = "battery";

    /** The same with the battery's volts. */
    public Reading withBattery(OptionalDouble volts) {
        return new Reading(at, wire, step, measured, shown, volts, meter, place, colour, note);
    }

    /** False for a line that was planned and not done. */
    public boolean isTaken() {
        return !(shown instanceof Shown.NotTaken);
    }

    /** True where the meter stood, in volts of the direct range. */
    public boolean isSteadyVolts() {
        return measured == Measured.VOLTS && shown instanceof Shown.Steady;
    }

    /** True for a line of the battery itself. */
    public boolean isOfBattery() {
        return wire.equalsIgnoreCase(BATTERY);
    }
}
