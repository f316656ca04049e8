package org.loomproof.workshop.meter.reading;

import java.util.OptionalDouble;
import org.loomproof.workshop.problem.Place;

/**
 * One line of a file of readings as it stands there.
 *
 * @param at the line
 * @param wire what the technician calls the wire, or the place
 * @param step what the car was doing
 * @param measured volts, ohms or amps
 * @param shown what the meter showed, in V, Ω or A
 * @param batteryVolts at the battery's posts at that moment, when the line says it
 * @param meter with what it was measured
 * @param place where it was found, as written
 * @param colour the wire's colour, as written
 * @param note free text
 * @param <S> what a step is in the eyes of the one who reads
 */
public record ReadingLine<S>(
        Place at,
        String wire,
        S step,
        Measured measured,
        Shown shown,
        OptionalDouble batteryVolts,
        MeterFacts meter,
        String place,
        String colour,
        String note) {}
