package org.loomproof.workshop.meter.reading;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.Separator;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.TextFile;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads the lines of a file of readings: CSV with the header {@code wire,step,value,unit,battery,meter,place,colour,note}, of
 * which all behind {@code unit} may be absent. Commas, semicolons or tabs; the columns in any order.
 *
 * @param <S> what a step is in the eyes of the one who reads
 */
public final class ReadingLines<S> {

    /** The columns, those that must be there first. */
    public static final List<String> COLUMNS =
            List.of("wire", "step", "value", "unit", "battery", "meter", "place", "colour", "note");

    private static final int NEEDED = 4;
    private static final int LONGEST_CELL = 400;
    private static final Phrase NO_HINT = Phrase.of("problem.hint.none");

    private final StepWords<S> steps;

    /** @param steps the words for steps */
    public ReadingLines(StepWords<S> steps) {
        this.steps = steps;
    }

    /** The lines of a file, or every problem in it. */
    public Checked<List<ReadingLine<S>>> read(Path file) {
        return switch (TextFile.read(file)) {
            case Checked.Bad<SourceText> bad -> new Checked.Bad<>(bad.problems());
            case Checked.Good<SourceText> good -> read(good.value());
        };
    }

    /** The lines of a text, or every problem in it. */
    public Checked<List<ReadingLine<S>>> read(SourceText source) {
        Problems problems = new Problems(source.name());
        return problems.orElse(read(source, problems));
    }

    /** The lines of a text that could be read; what is wrong with the others is noted. */
    public List<ReadingLine<S>> read(SourceText source, Problems problems) {
        List<ReadingLine<S>> readings = new ArrayList<>();
        char separator = Separator.of(source.text());
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(true)
                .setTrailingData(true)
                .setLenientEof(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(source.text()), format)) {
            new Body(problems, readings, separator).take(parser);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
        return List.copyOf(readings);
    }

    /** The lines of one file as they are taken in. */
    private final class Body {
        private final Problems problems;
        private final List<ReadingLine<S>> readings;
        private final char separator;
        private Optional<List<String>> header = Optional.empty();

        Body(Problems problems, List<ReadingLine<S>> readings, char separator) {
            this.problems = problems;
            this.readings = readings;
            this.separator = separator;
        }

        void take(CSVParser parser) {
            for (CSVRecord row : parser) {
                int number = (int) parser.getCurrentLineNumber();
                if (header.isEmpty()) {
                    takeHeader(row, number);
                } else {
                    takeLine(Line.of(header.get(), row, number, separator));
                }
            }
            if (header.isEmpty()) {
                problems.add(
                        Place.file(problems.file()),
                        ProblemKind.MISSING,
                        "",
                        Phrase.of("problem.wanted.header", String.join(",", COLUMNS)),
                        NO_HINT);
            } else if (readings.isEmpty() && problems.isEmpty()) {
                problems.add(
                        Place.file(problems.file()),
                        ProblemKind.MISSING,
                        "",
                        Phrase.of("problem.wanted.reading"),
                        NO_HINT);
            }
        }

        private void takeHeader(CSVRecord row, int number) {
            List<String> names = new ArrayList<>();
            row.forEach(cell -> names.add(Line.column(cell)));
            if (names.getFirst().startsWith("#") || names.stream().allMatch(String::isEmpty)) {
                return;
            }
            while (names.getLast().isEmpty()) {
                names.removeLast();
            }
            header = Optional.of(names);
            Set<String> seen = new HashSet<>();
            for (String name : names) {
                Place at = place(number, name);
                if (!COLUMNS.contains(name)) {
                    problems.add(
                            at,
                            ProblemKind.UNKNOWN_KEY,
                            name,
                            Phrase.of("problem.wanted.one-of", COLUMNS),
                            Words.hint(name, COLUMNS));
                } else if (!seen.add(name)) {
                    problems.add(at, ProblemKind.DUPLICATE_KEY, name, Phrase.of("problem.wanted.key-once"), NO_HINT);
                }
            }
            for (String needed : COLUMNS.subList(0, NEEDED)) {
                if (!names.contains(needed)) {
                    problems.add(
                            place(number, needed),
                            ProblemKind.MISSING,
                            "",
                            Phrase.of("problem.wanted.column", needed),
                            Phrase.of("problem.hint.header", String.join(",", COLUMNS)));
                }
            }
        }

        private void takeLine(Line line) {
            if (line.isIdle()) {
                return;
            }
            String wire = line.cell("wire");
            Place at = place(line.number(), wire);
            if (line.isTooLong()) {
                problems.add(
                        at,
                        ProblemKind.WRONG_SHAPE,
                        "",
                        Phrase.of(
                                "problem.wanted.cells-at-most",
                                header.orElseThrow().size()),
                        Phrase.of("problem.hint.quotes"));
                return;
            }
            if (wire.isEmpty()) {
                problems.add(at, ProblemKind.MISSING, "", Phrase.of("problem.wanted.wire-name"), NO_HINT);
            }
            for (String column : COLUMNS) {
                if (line.cell(column).length() > LONGEST_CELL) {
                    problems.add(
                            place(line.number(), column),
                            ProblemKind.WRONG_SHAPE,
                            line.cell(column),
                            Phrase.of("problem.wanted.shorter-text", LONGEST_CELL),
                            NO_HINT);
                }
            }
            Optional<S> step = step(line);
            Optional<ShownReader.Outcome.Read> shown = shown(line);
            OptionalDouble battery = battery(line);
            if (step.isPresent() && shown.isPresent()) {
                readings.add(new ReadingLine<>(
                        at,
                        wire,
                        step.get(),
                        shown.get().measured(),
                        shown.get().shown(),
                        battery,
                        MeterFacts.read(line.cell("meter")),
                        line.cell("place"),
                        line.cell("colour"),
                        line.cell("note")));
            }
        }

        private Optional<S> step(Line line) {
            String text = line.cell("step");
            Optional<S> step = text.isEmpty() ? Optional.empty() : steps.read(text);
            if (step.isEmpty()) {
                List<String> accepted = steps.accepted();
                problems.add(
                        place(line.number(), line.cell("wire") + ".step"),
                        text.isEmpty() ? ProblemKind.MISSING : ProblemKind.NOT_ONE_OF,
                        text,
                        Phrase.of("problem.wanted.step-of-car", accepted),
                        Words.hint(text, accepted));
            }
            return step;
        }

        private Optional<ShownReader.Outcome.Read> shown(Line line) {
            String value = line.cell("value");
            String unit = line.cell("unit");
            Place at = place(line.number(), line.cell("wire") + ".value");
            return switch (ShownReader.read(value, unit)) {
                case ShownReader.Outcome.Read read -> Optional.of(read);
                case ShownReader.Outcome.NotAValue ignored ->
                    noted(at, ProblemKind.NOT_A_NUMBER, value, "problem.wanted.shown");
                case ShownReader.Outcome.NoUnit ignored ->
                    noted(at, ProblemKind.WRONG_UNIT, value, "problem.wanted.unit-of-reading");
                case ShownReader.Outcome.WrongUnit(String wrong) ->
                    noted(at, ProblemKind.WRONG_UNIT, wrong, "problem.wanted.unit-of-reading");
                case ShownReader.Outcome.BeyondSense ignored ->
                    noted(at, ProblemKind.OUT_OF_RANGE, value, "problem.wanted.sensible-reading");
            };
        }

        private Optional<ShownReader.Outcome.Read> noted(Place at, ProblemKind kind, String found, String wanted) {
            problems.add(at, kind, found, Phrase.of(wanted), NO_HINT);
            return Optional.empty();
        }

        private OptionalDouble battery(Line line) {
            String text = line.cell("battery");
            if (ShownReader.read(text, "V") instanceof ShownReader.Outcome.Read(var measured, var shown)
                    && measured == Measured.VOLTS) {
                if (shown instanceof Shown.NotTaken) {
                    return OptionalDouble.empty();
                }
                if (shown instanceof Shown.Steady(double volts, double digit) && volts >= 3 && volts <= 18) {
                    return OptionalDouble.of(volts);
                }
            }
            problems.add(
                    place(line.number(), line.cell("wire") + ".battery"),
                    ProblemKind.OUT_OF_RANGE,
                    text,
                    Phrase.of("problem.wanted.battery-volts"),
                    NO_HINT);
            return OptionalDouble.empty();
        }

        private Place place(int number, String path) {
            return new Place(problems.file(), number, 0, path);
        }
    }
}
