package org.loomproof.workshop.meter.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Range;

/**
 * The pull-up of a wire and the resistance behind each of its buttons, from volts alone: one reading at rest, one with a known
 * resistor to the body, one with each button. By the divider's law, with the meter's own resistance taken out; ranges by the
 * meter's accuracy.
 *
 * @param pullUp what holds the wire
 * @param switches what each button puts to the body
 */
public record StepValues(Range<Ohms> pullUp, List<Button> switches) {

    /** More than this against a pull-up is an open line. */
    private static final double MOST_OHMS = 1e6;

    /**
     * A button.
     *
     * @param step the step in which it was pressed
     * @param ohms from the wire to the body through it
     */
    public record Button(Step step, Range<Ohms> ohms) {}

    public StepValues {
        switches = List.copyOf(switches);
    }

    private record Volts(double value, double limit) {
        Volts moved(int way) {
            return new Volts(value + way * limit, 0);
        }
    }

    /** From the readings of one wire; empty when one of the three sorts is missing or they fit no pull-up. */
    static Optional<StepValues> of(List<Reading> readings) {
        Optional<Reading> loaded = readings.stream()
                .filter(r -> r.isSteadyVolts() && r.step().resistorOhms().isPresent())
                .findFirst();
        if (loaded.isEmpty()) {
            return Optional.empty();
        }
        Step rest = Step.at(loaded.get().step().key());
        Optional<Reading> open = readings.stream()
                .filter(r -> r.isSteadyVolts() && r.step().plain().equals(rest))
                .findFirst();
        return open.flatMap(o -> of(o, loaded.get(), readings));
    }

    private static Optional<StepValues> of(Reading open, Reading loaded, List<Reading> readings) {
        double known = loaded.step().resistorOhms().orElseThrow();
        double meter = loaded.meter().inputOhms();
        Volts v0 = volts(open, open);
        Volts vk = volts(loaded, open);
        double[] pull = new double[3];
        for (int way = -1; way <= 1; way++) {
            pull[way + 1] = pullUp(v0.moved(way).value, vk.moved(-way).value, known, meter);
        }
        if (!(pull[0] > 0) || !(pull[2] < MOST_OHMS)) {
            return Optional.empty();
        }
        List<Button> buttons = new ArrayList<>();
        for (Reading pressed : readings) {
            boolean isPressed = pressed.isSteadyVolts()
                    && pressed.step().aid() == Step.Aid.NONE
                    && !pressed.step().asleep()
                    && pressed.step().key() == open.step().key()
                    && pressed.step().worked() != Step.Worked.NOTHING;
            if (isPressed) {
                Volts v1 = volts(pressed, open);
                if (v1.value < v0.value - v0.limit - v1.limit) {
                    buttons.add(new Button(pressed.step(), button(v0, v1, pull, meter)));
                }
            }
        }
        return Optional.of(new StepValues(ohms(pull[0], pull[1], pull[2]), buttons));
    }

    private static Range<Ohms> button(Volts v0, Volts v1, double[] pull, double meter) {
        double low = toBody(v0.moved(1).value, Math.max(0, v1.moved(-1).value), pull[0], meter);
        double typical = toBody(v0.value, Math.max(0, v1.value), pull[1], meter);
        double high = toBody(v0.moved(-1).value, v1.moved(1).value, pull[2], meter);
        return ohms(low, typical, high);
    }

    /** What holds a wire that shows {@code v0} open and {@code vk} over a known resistor, both to a meter of its own resistance. */
    static double pullUp(double v0, double vk, double known, double meter) {
        return (v0 - vk) / (vk / known - (v0 - vk) / meter);
    }

    /** What puts a wire with that pull-up from {@code v0} to {@code v1}. */
    static double toBody(double v0, double v1, double pullUp, double meter) {
        return v1 / ((v0 - v1) * (1 / pullUp + 1 / meter));
    }

    private static Range<Ohms> ohms(double low, double typical, double high) {
        return new Range<>(new Ohms(low), new Ohms(Math.max(low, typical)), new Ohms(Math.max(typical, high)));
    }

    /** Volts as they were with the battery of the reading at rest, where the wire follows the battery. */
    private static Volts volts(Reading reading, Reading rest) {
        Shown.Steady shown = (Shown.Steady) reading.shown();
        double scale = 1;
        if (reading.batteryVolts().isPresent() && rest.batteryVolts().isPresent()) {
            double battery = rest.batteryVolts().getAsDouble();
            boolean followsBattery = ((Shown.Steady) rest.shown()).value() > 0.8 * battery;
            scale = followsBattery ? battery / reading.batteryVolts().getAsDouble() : 1;
        }
        return new Volts(shown.value() * scale, reading.meter().limit(shown.value(), shown.resolution()) * scale);
    }
}
