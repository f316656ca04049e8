package org.loomproof.workshop.meter.synthetic;

import java.util.OptionalDouble;
import java.util.Random;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.MeterFacts;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.Step.KeyAt;
import org.loomproof.workshop.problem.Place;

/** A hand with a meter: of its own accuracy, sometimes slow, sometimes on the wrong wire. */
final class Hand {

    private static final double MISHAPS = 0.02;
    private final Random random;
    private final MadeWire wire;
    private final MeterFacts meter;
    private final boolean notesBattery;
    private final double restVolts;

    Hand(MadeWire wire, Random random) {
        this.wire = wire;
        this.random = random;
        MeterFacts.Pace pace = random.nextDouble() < 0.25 ? MeterFacts.Pace.SLOW : MeterFacts.Pace.USUAL;
        this.meter = new MeterFacts(10e6, 0.5, 2, pace);
        this.notesBattery = random.nextDouble() < 0.7;
        this.restVolts = 11.7 + 1.4 * random.nextDouble();
    }

    Reading take(MeterTest test) {
        Step step = test.step();
        double battery = battery(step.key());
        boolean mishap = random.nextDouble() < MISHAPS;
        Measured measured = test.kind() == MeterTest.Kind.OHMS ? Measured.OHMS : Measured.VOLTS;
        Shown shown = switch (test.kind()) {
            case VOLTS, RESISTOR, TEST_LAMP -> mishap ? anyVolts(battery) : volts(step, battery);
            case ALTERNATING -> alternating(step);
            case OHMS -> mishap ? new Shown.Overload() : ohms(step);
        };
        OptionalDouble noted = notesBattery
                ? OptionalDouble.of(rounded(battery + 0.05 * random.nextGaussian(), 0.1))
                : OptionalDouble.empty();
        return new Reading(Place.nowhere("made up"), "w", step, measured, shown, noted, meter, "", "", "");
    }

    private double battery(KeyAt key) {
        return switch (key) {
            case NO_KEY, OFF -> restVolts;
            case ACCESSORY, ON -> restVolts - 0.3 * random.nextDouble();
            case CRANKING -> 8.6 + 2.9 * random.nextDouble();
            case RUNNING -> 13.3 + 1.6 * random.nextDouble();
        };
    }

    private Shown anyVolts(double battery) {
        double pick = random.nextDouble();
        return new Shown.Steady(rounded(pick < 0.4 ? 0 : pick < 0.7 ? battery : pick * battery, 0.1), 0.1);
    }

    private Shown volts(Step step, double battery) {
        double real = wire.volts(step, battery, meter.inputOhms());
        if (step.key() == KeyAt.CRANKING && meter.pace() == MeterFacts.Pace.SLOW) {
            double before = wire.volts(Step.at(KeyAt.ON), restVolts, meter.inputOhms());
            real = before + random.nextDouble() * (real - before);
        }
        double said = random.nextDouble();
        if (wire.floats(step)) {
            double ghost = Math.abs(real * (1 + 0.35 * random.nextGaussian()) + 0.03 * random.nextGaussian());
            if (ghost < 0.3) {
                return steady(ghost);
            }
            if (said < 0.2) {
                return new Shown.Floating();
            }
            return said < 0.4 ? around(ghost, 0.5 + ghost / 2) : steady(ghost);
        }
        if (wire.isLively(step)) {
            double mean = real * (1 + 0.1 * random.nextGaussian());
            return said < 0.3 ? around(mean, 0.3 * wire.swing()) : steady(mean);
        }
        double unsteady = step.key() == KeyAt.CRANKING ? 0.5 : 0.02;
        double shown = real + unsteady * random.nextGaussian();
        return said < (step.key() == KeyAt.CRANKING ? 0.15 : 0.015) ? around(shown, unsteady + 0.2) : steady(shown);
    }

    private Shown steady(double volts) {
        double limit = 1.5 * meter.limit(volts, 0.01);
        double digit = random.nextDouble() < 0.6 ? 0.1 : 0.01;
        return new Shown.Steady(rounded(volts + limit * (2 * random.nextDouble() - 1), digit), digit);
    }

    private Shown around(double middle, double width) {
        double half = width / 2 * (0.6 + 0.8 * random.nextDouble());
        return new Shown.Moving(rounded(middle - half, 0.1), rounded(middle + half, 0.1));
    }

    private Shown alternating(Step step) {
        double rms = wire.isLively(step) ? wire.swing() * (0.25 + 0.3 * random.nextDouble()) : 0;
        double hum = wire.floats(step) ? 0.5 : 0.05;
        return new Shown.Alternating(rounded(Math.abs(rms + hum * random.nextGaussian()), 0.01));
    }

    private Shown ohms(Step step) {
        OptionalDouble ohms = wire.bodyOhms(step);
        if (ohms.isEmpty() || ohms.getAsDouble() > 20e6) {
            return new Shown.Overload();
        }
        double shown = ohms.getAsDouble() * (1 + 0.02 * random.nextGaussian()) + 0.1 + 0.3 * random.nextDouble();
        double digit = shown < 200 ? 0.1 : shown < 2000 ? 1 : shown / 1000;
        return new Shown.Steady(rounded(shown, digit), digit);
    }

    private static double rounded(double value, double digit) {
        return Math.rint(value / digit) * digit;
    }
}
