package org.loomproof.workshop.meter.expected;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.meter.reading.MeterFacts;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/** An expected reading in words: what to do first, and what the meter then shows, told by the battery of that moment. */
public final class ReadingWords {

    /** A band that lies under this is told as nothing. */
    private static final double NOTHING_VOLTS = 0.3;

    private final StepsTo steps;

    /** Words for one job. */
    public ReadingWords(Brief brief) {
        this.steps = new StepsTo(brief.sheet(), brief.kit());
    }

    /** What to do from a car at rest; cranking is said by the key alone. */
    public Phrase when(ExpectedReading reading) {
        Situation at = reading.when();
        List<Phrase> moves = steps.list(
                new Situation(at.positions(), SupplyPoint.REST, at.controller(), at.feed(), at.moment(), at.still()));
        return moves.isEmpty() ? Phrase.of("expected.at-rest") : Phrase.of("expected.steps", moves);
    }

    /** Lines of one wire: steps that follow each other and show the same are told together. */
    public List<Phrase> lines(List<ExpectedReading> readings) {
        List<Phrase> lines = new ArrayList<>();
        List<Phrase> together = new ArrayList<>();
        for (int k = 0; k < readings.size(); k++) {
            together.add(when(readings.get(k)));
            Phrase shows = shows(readings.get(k));
            if (k + 1 == readings.size() || !shows.equals(shows(readings.get(k + 1)))) {
                lines.add(Phrase.of("expected.line", List.copyOf(together), shows));
                together.clear();
            }
        }
        return lines;
    }

    /** Where the meter is, for one end of a cut wire; the wire as found otherwise. */
    public static Phrase at(Touch touch) {
        return Phrase.of("expected.end-" + Words.of(touch.end()));
    }

    /** What it shows. */
    public static Phrase shows(ExpectedReading reading) {
        if (reading.floats()) {
            return Phrase.of("expected.floats");
        }
        VoltsBand band = reading.band();
        double battery = reading.batteryVolts();
        double low = band.low(battery);
        double high = band.high(battery);
        if (high < NOTHING_VOLTS && low > -NOTHING_VOLTS) {
            return Phrase.of("expected.nothing", up(high));
        }
        if (band.followsTheBattery()) {
            // Both are read on one meter: only what the meter's last digits do not tell is left of its error.
            double most = battery - low + MeterFacts.USUAL.percent() / 100 * low;
            return Phrase.of("expected.battery-less", up(Math.max(most, 0)));
        }
        return band.isFirm()
                ? Phrase.of("expected.firm", down(low), up(high))
                : Phrase.of("expected.between", down(low), up(high), battery);
    }

    private static String down(double volts) {
        return tenths(Math.floor(volts * 10) / 10);
    }

    private static String up(double volts) {
        return tenths(Math.ceil(volts * 10) / 10);
    }

    private static String tenths(double volts) {
        return String.format(Locale.ROOT, "%.1f", volts + 0.0);
    }
}
