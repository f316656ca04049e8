package org.loomproof.pages.bay;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work.ReadingTaken;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.meter.expected.Touch;
import org.loomproof.workshop.meter.expected.VoltsBand;
import org.loomproof.workshop.meter.finding.NamedThings;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Readings;
import org.loomproof.workshop.meter.reading.ReadingsReader;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** The readings of a work log, read as a file of readings would be. */
final class Taken {

    /** A whole wire, in the entries of a work log. */
    static final String WHOLE = "whole";

    private static final String HEADER = "wire,step,value,unit,battery\n";

    /** Where nobody said the battery's volts: what a sound one may have beside what a text names. Common practice, no published source. */
    private static final double LOWEST_SHARE = 0.94;

    private static final double HIGHEST_SHARE = 1.05;

    private final ReadingsReader reader;
    private final List<Noted> noted;
    private final Map<String, Reading> read = new HashMap<>();

    Taken(Sheet sheet, List<Noted> standing) {
        this.reader = new ReadingsReader(NamedThings.of(sheet));
        this.noted = standing.stream()
                .filter(one -> one.work() instanceof ReadingTaken)
                .toList();
        List<Noted> good =
                noted.stream().filter(one -> !read(List.of(one)).isEmpty()).toList();
        List<Reading> together = read(good);
        for (int k = 0; k < good.size(); k++) {
            read.put(good.get(k).id(), together.get(k));
        }
    }

    static ReadingTaken taken(Noted noted) {
        return (ReadingTaken) noted.work();
    }

    /** The readings at one part of a wire, the first one first. */
    List<Noted> at(String circuit, String end) {
        return noted.stream()
                .filter(one ->
                        taken(one).circuit().equals(circuit) && taken(one).end().equals(end))
                .toList();
    }

    /** What is to be believed about whole wires, the battery's own among them. */
    Readings whole() {
        return new Readings(noted.stream()
                .filter(one -> taken(one).end().equals(WHOLE))
                .flatMap(one -> find(one).stream())
                .toList());
    }

    /** One reading, with the battery of its step where that was read; nothing where the value is none. */
    Optional<Reading> find(Noted one) {
        return Optional.ofNullable(read.get(one.id()));
    }

    /** All of these as one file would be read; none where one of them cannot be. */
    private List<Reading> read(List<Noted> rows) {
        String text = rows.stream().map(row -> csv(taken(row))).collect(Collectors.joining("\n", HEADER, "\n"));
        return switch (reader.read(new SourceText("work log", text))) {
            case Checked.Good<Readings>(Readings good) -> good.readings();
            case Checked.Bad<Readings> ignored -> List.of();
        };
    }

    private static String csv(ReadingTaken taken) {
        return List.of(taken.circuit(), taken.step(), taken.value(), taken.unit(), taken.battery()).stream()
                .map(cell -> "\"" + cell.replace("\"", "\"\"") + "\"")
                .collect(Collectors.joining(","));
    }

    /** Whether a reading is what must be shown, the meter's own error and an unsaid battery allowed for. */
    static boolean isAsExpected(ExpectedReading expected, Reading reading) {
        if (reading.measured() != Measured.VOLTS) {
            return false;
        }
        Allowed allowed = Allowed.by(expected, reading.batteryVolts());
        return switch (reading.shown()) {
            case Shown.Steady(double volts, double digit) -> allowed.holds(volts);
            case Shown.Moving(double low, double high) -> allowed.holds(low) && allowed.holds(high);
            case Shown.Floating() -> expected.floats();
            case Shown.Alternating(double rms) -> false;
            case Shown.Overload() -> false;
            case Shown.NotTaken() -> false;
        };
    }

    /** Whether no reading can be what both must show, whatever the battery has. */
    static boolean areApart(ExpectedReading one, ExpectedReading other) {
        Allowed here = Allowed.by(one, OptionalDouble.empty());
        Allowed there = Allowed.by(other, OptionalDouble.empty());
        return here.high < there.low || there.high < here.low;
    }

    /** The volts that a meter may show. */
    private record Allowed(double low, double high) {

        /**
         * By the battery's volts, where they are known. At a cut wire with the key at start they never are: whether the engine
         * still turns, and so how far the battery falls, hangs on the cut itself.
         */
        static Allowed by(ExpectedReading expected, OptionalDouble battery) {
            double usual = expected.batteryVolts();
            if (expected.at().end() != Touch.End.WHOLE && expected.isCranking()) {
                return between(
                        expected.band(),
                        LOWEST_SHARE * usual,
                        HIGHEST_SHARE * SupplyPoint.REST.volts().value());
            }
            return between(
                    expected.band(), battery.orElse(LOWEST_SHARE * usual), battery.orElse(HIGHEST_SHARE * usual));
        }

        private static Allowed between(VoltsBand band, double few, double many) {
            return new Allowed(Math.min(band.low(few), band.low(many)), Math.max(band.high(few), band.high(many)));
        }

        boolean holds(double volts) {
            return volts >= low && volts <= high;
        }
    }
}
