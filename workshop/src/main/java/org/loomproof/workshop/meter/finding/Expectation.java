package org.loomproof.workshop.meter.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.role.Shows;
import org.loomproof.workshop.meter.role.WireModel;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.words.Phrase;

/** What a role would have shown where a reading was taken, in the words of a meter. */
final class Expectation {

    /** Left out at either end: one drawn car in twenty. */
    private static final double TAIL = 0.05;

    private Expectation() {}

    private record Weighted(double value, double weight) {}

    /** The range that the cars of a role show, each as much as it is believed; empty-handed for the unknown role. */
    static Phrase of(Belief belief, WireRole role, Reading reading) {
        List<Weighted> values = new ArrayList<>();
        double open = 0;
        double floats = 0;
        double moves = 0;
        double all = 0;
        int at = 0;
        for (WireModel model : belief.fleet().models()) {
            if (model.role() != role) {
                at += model.cars();
                continue;
            }
            boolean isOhms = reading.measured() == Measured.OHMS;
            List<Shows> shows = model.shows(reading.step(), reading.meter().inputOhms());
            List<OptionalDouble> ohms = isOhms ? model.ohms(reading.step()) : List.of();
            for (int car = 0; car < model.cars(); car++, at++) {
                // A role that is all but ruled out still shows what it shows.
                double weight = belief.weight(at) + 1e-12 * model.share() / model.cars();
                all += weight;
                Shows one = shows.get(car);
                if (isOhms) {
                    OptionalDouble value = ohms.get(car);
                    open += value.isEmpty() ? weight : 0;
                    value.ifPresent(v -> values.add(new Weighted(v, weight)));
                } else if (reading.shown() instanceof Shown.Alternating) {
                    values.add(new Weighted(0.45 * one.swing(), weight));
                } else {
                    floats += one.floats() ? weight : 0;
                    moves += one.pulses() ? weight : 0;
                    double battery = reading.batteryVolts()
                            .orElse(model.battery(car, reading.step().key()));
                    values.add(new Weighted(one.volts(battery), weight));
                }
            }
        }
        if (all <= 0) {
            return Phrase.of("meter.shows.anything");
        }
        if (open > all / 2) {
            return Phrase.of("meter.shows.open");
        }
        if (floats > all / 2) {
            return Phrase.of("meter.shows.nothing-holds");
        }
        Phrase range = range(values, reading.measured());
        return moves > all / 2 ? Phrase.of("meter.shows.moving", range) : range;
    }

    private static Phrase range(List<Weighted> values, Measured measured) {
        values.sort(Comparator.comparingDouble(Weighted::value));
        double sum = values.stream().mapToDouble(Weighted::weight).sum();
        return range(quantile(values, TAIL * sum), quantile(values, (1 - TAIL) * sum), measured);
    }

    /** A range in words; one value where both ends read alike. */
    static Phrase range(double low, double high, Measured measured) {
        String from = text(low, measured);
        String to = text(high, measured);
        return from.equals(to) ? Phrase.of("meter.shows.value", to) : Phrase.of("meter.shows.range", from, to);
    }

    static String text(double value, Measured measured) {
        double kept = measured == Measured.VOLTS ? Math.rint(value * 10) / 10 : value;
        return measured == Measured.VOLTS ? Figures.plain(kept) + " V" : Figures.withUnit(kept, measured.symbol());
    }

    private static double quantile(List<Weighted> sorted, double upTo) {
        double sum = 0;
        for (Weighted each : sorted) {
            sum += each.weight();
            if (sum >= upTo) {
                return each.value();
            }
        }
        return sorted.getLast().value();
    }

    /** What a reading showed, in words. */
    static Phrase shown(Reading reading) {
        return switch (reading.shown()) {
            case Shown.Steady s ->
                Phrase.of(
                        "meter.shows.value",
                        Figures.withUnit(s.value(), reading.measured().symbol()));
            case Shown.Moving m ->
                Phrase.of("meter.shows.range", text(m.low(), reading.measured()), text(m.high(), reading.measured()));
            case Shown.Alternating a -> Phrase.of("meter.shows.alternating", Figures.plain(a.rms()));
            case Shown.Floating f -> Phrase.of("meter.shows.nothing-holds");
            case Shown.Overload o -> Phrase.of("meter.shows.open");
            case Shown.NotTaken n -> Phrase.of("meter.shows.not-taken");
        };
    }
}
