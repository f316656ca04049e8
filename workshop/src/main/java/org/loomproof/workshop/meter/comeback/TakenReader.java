package org.loomproof.workshop.meter.comeback;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.ReadingLine;
import org.loomproof.workshop.meter.reading.ReadingLines;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads what was measured at a finished car: a file of readings whose wires are places of the plan ({@code P1-5}, {@code K1 87a},
 * {@code starter}, {@code starter after}) and whose steps are those of {@link LookWords}.
 */
public final class TakenReader {

    private final ReadingLines<Situation> lines;
    private final Map<String, Probe> places = new LinkedHashMap<>();

    /** A reader for one car. */
    public TakenReader(Comeback comeback) {
        this.lines = new ReadingLines<>(comeback.words());
        comeback.looks().forEach(look -> places.put(look.at().name(), look.at()));
    }

    /** What was measured, or every problem of the file. */
    public Checked<List<Taken>> read(Path file) {
        return taken(file.toString(), lines.read(file));
    }

    /** What was measured, or every problem of the text. */
    public Checked<List<Taken>> read(SourceText text) {
        return taken(text.name(), lines.read(text));
    }

    private Checked<List<Taken>> taken(String file, Checked<List<ReadingLine<Situation>>> read) {
        return switch (read) {
            case Checked.Bad<List<ReadingLine<Situation>>>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<List<ReadingLine<Situation>>>(var all) -> taken(file, all);
        };
    }

    private Checked<List<Taken>> taken(String file, List<ReadingLine<Situation>> all) {
        Problems problems = new Problems(file);
        List<Taken> taken = new ArrayList<>();
        for (ReadingLine<Situation> line : all) {
            if (!isOfBattery(line)) {
                take(line, all, problems).ifPresent(taken::add);
            }
        }
        return problems.orElse(List.copyOf(taken));
    }

    private Optional<Taken> take(ReadingLine<Situation> line, List<ReadingLine<Situation>> all, Problems problems) {
        Probe place = places.get(line.wire());
        if (place == null) {
            List<String> names = List.copyOf(places.keySet());
            problems.add(
                    line.at(),
                    ProblemKind.UNKNOWN_REFERENCE,
                    line.wire(),
                    Phrase.of("problem.wanted.one-of", names),
                    Words.hint(line.wire(), names));
            return Optional.empty();
        }
        if (line.measured() != Measured.VOLTS) {
            problems.add(
                    line.at(),
                    ProblemKind.WRONG_UNIT,
                    line.measured().symbol(),
                    Phrase.of("problem.wanted.volts-at-comeback"));
            return Optional.empty();
        }
        OptionalDouble volts = volts(line.shown());
        return volts.isPresent()
                ? Optional.of(new Taken(new Look(place, line.step()), volts.getAsDouble(), battery(line, all)))
                : Optional.empty();
    }

    /** What wandered hangs on nothing; what was not taken, or is no voltage that stands, says nothing. */
    private static OptionalDouble volts(Shown shown) {
        return switch (shown) {
            case Shown.Steady(double value, double digit) -> OptionalDouble.of(value);
            case Shown.Moving(double low, double high) -> OptionalDouble.of((low + high) / 2);
            case Shown.Floating floating -> OptionalDouble.of(0);
            case Shown.Alternating alternating -> OptionalDouble.empty();
            case Shown.Overload overload -> OptionalDouble.empty();
            case Shown.NotTaken not -> OptionalDouble.empty();
        };
    }

    /** The line's own, or that of a line of the battery, the same step first; else that of a charged one. */
    private static double battery(ReadingLine<Situation> line, List<ReadingLine<Situation>> all) {
        if (line.batteryVolts().isPresent()) {
            return line.batteryVolts().getAsDouble();
        }
        List<ReadingLine<Situation>> own =
                all.stream().filter(TakenReader::isOfBattery).toList();
        return own.stream()
                .filter(each -> each.step().equals(line.step()))
                .findFirst()
                .or(() -> own.stream().findFirst())
                .map(each -> volts(each.shown()))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .orElse(SupplyPoint.REST.volts().value());
    }

    private static boolean isOfBattery(ReadingLine<Situation> line) {
        return line.wire().equalsIgnoreCase(Reading.BATTERY);
    }
}
