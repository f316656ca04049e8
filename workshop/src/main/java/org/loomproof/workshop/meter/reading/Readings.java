package org.loomproof.workshop.meter.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * Everything that one file says.
 *
 * @param readings in the order of the file, lines of the battery itself among them
 */
public record Readings(List<Reading> readings) {

    public Readings {
        readings = List.copyOf(readings);
    }

    /** What was read on each wire, the battery left out, wires in the order in which they first appear. */
    public Map<String, List<Reading>> byWire() {
        Map<String, List<Reading>> wires = new LinkedHashMap<>();
        for (Reading reading : readings) {
            if (!reading.isOfBattery()) {
                wires.computeIfAbsent(reading.wire(), w -> new java.util.ArrayList<>())
                        .add(reading);
            }
        }
        return wires;
    }

    /** The same with the battery's volts, where a line does not say them, from the battery's own lines. */
    Readings withBatteryOfItsLines() {
        return new Readings(readings.stream()
                .map(r -> r.batteryVolts().isPresent() || r.isOfBattery() ? r : r.withBattery(batteryAt(r.step())))
                .toList());
    }

    /** From a line of the battery at the same step; else, cranking apart, at the same key position; nothing else will do. */
    private OptionalDouble batteryAt(Step step) {
        OptionalDouble exact = batteryWhere(r -> r.step().equals(step));
        return exact.isPresent() ? exact : batteryWhere(r -> r.step().key() == step.key());
    }

    private OptionalDouble batteryWhere(Predicate<Reading> wanted) {
        for (Reading reading : readings) {
            if (reading.isOfBattery() && reading.measured() == Measured.VOLTS && wanted.test(reading)) {
                OptionalDouble volts = middle(reading.shown());
                if (volts.isPresent()) {
                    return volts;
                }
            }
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble middle(Shown shown) {
        return switch (shown) {
            case Shown.Steady s -> OptionalDouble.of(s.value());
            case Shown.Moving m -> OptionalDouble.of((m.low() + m.high()) / 2);
            case Shown.Alternating a -> OptionalDouble.empty();
            case Shown.Floating f -> OptionalDouble.empty();
            case Shown.Overload o -> OptionalDouble.empty();
            case Shown.NotTaken n -> OptionalDouble.empty();
        };
    }
}
