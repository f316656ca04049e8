package org.loomproof.workshop.brief.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads lines of cells between commas, semicolons or tabs under a fixed first line, and notes what is wrong with them. Lines that
 * begin with {@code #} and empty ones are passed over.
 */
public final class CsvLines {

    private static final Pattern DECIMAL = Pattern.compile("\\d{1,9}(\\.\\d{1,6})?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d{1,9},\\d{1,6}");

    private final List<String> header;
    private final Problems problems;
    private final Map<String, Long> seen = new HashMap<>();

    /** A line that has as many cells as the first line. */
    public record Line(long number, List<String> cells) {}

    /**
     * @param file its name, for the problems
     * @param header the cells of its first line
     */
    public CsvLines(String file, List<String> header) {
        this.problems = new Problems(file);
        this.header = List.copyOf(header);
    }

    /** What is read from a file's text, or every problem in it. */
    public static <T> Checked<T> read(Path file, Function<SourceText, Checked<T>> reader) {
        return switch (TextFile.read(file)) {
            case Checked.Good<SourceText>(var text) -> reader.apply(text);
            case Checked.Bad<SourceText>(var problems) -> new Checked.Bad<>(problems);
        };
    }

    /** The lines under the first one. */
    public List<Line> of(String text) {
        List<Line> lines = new ArrayList<>();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(Separator.of(text))
                .setCommentMarker('#')
                .setTrim(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            boolean isFirst = true;
            for (CSVRecord row : parser) {
                Line line = new Line(parser.getCurrentLineNumber(), row.toList());
                if (isFirst) {
                    checkFirst(line);
                } else if (!isEmpty(line) && hasItsCells(line)) {
                    lines.add(line);
                }
                isFirst = false;
            }
        } catch (UncheckedIOException | IOException e) {
            problems.add(
                    Place.file(problems.file()),
                    ProblemKind.WRONG_SHAPE,
                    String.valueOf(e.getMessage()),
                    Phrase.of("problem.wanted.csv"));
        }
        return lines;
    }

    private void checkFirst(Line line) {
        if (!line.cells().equals(header)) {
            problems.add(
                    place(line.number(), ""),
                    ProblemKind.WRONG_FORMAT,
                    String.join(",", line.cells()),
                    Phrase.of("problem.wanted.first-line", String.join(",", header)));
        }
    }

    private static boolean isEmpty(Line line) {
        return line.cells().equals(List.of(""));
    }

    private boolean hasItsCells(Line line) {
        if (line.cells().size() == header.size()) {
            return true;
        }
        boolean comma = line.cells().size() == header.size() + 1;
        problems.add(
                place(line.number(), ""),
                ProblemKind.WRONG_SHAPE,
                String.join(",", line.cells()),
                Phrase.of("problem.wanted.cells", header.size()),
                Phrase.of(comma ? "problem.hint.comma-cell" : "problem.hint.none"));
        return false;
    }

    /** A word as words are compared: in small letters, joined by dashes. */
    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    /** Whether no line before named the same; it is noted when one did. */
    public boolean isNew(String name, String said, Line line) {
        Long before = seen.putIfAbsent(plain(name), line.number());
        if (before != null) {
            problems.add(
                    place(line.number(), line.cells().getFirst()),
                    ProblemKind.DUPLICATE_KEY,
                    said,
                    Phrase.of("problem.wanted.named-once"),
                    Phrase.of("problem.hint.given-before", String.valueOf(before)));
        }
        return before == null;
    }

    /** A plain decimal number, zero or more; it is noted when it is none. */
    public Optional<BigDecimal> decimal(String value, String path, long line) {
        if (DECIMAL.matcher(value).matches()) {
            return Optional.of(new BigDecimal(value));
        }
        Phrase hint = DECIMAL_COMMA.matcher(value).matches()
                ? Phrase.of("problem.hint.comma", value.replace(',', '.'))
                : Phrase.of("problem.hint.none");
        problems.add(
                place(line, path), ProblemKind.NOT_A_NUMBER, value, Phrase.of("problem.wanted.plain-decimal"), hint);
        return Optional.empty();
    }

    /** The value of a word, by the words of an enumeration, in capitals or not; it is noted when it is none of them. */
    public <E extends Enum<E>> Optional<E> word(Class<E> type, String found, long line) {
        Map<String, E> words = Words.all(type);
        Optional<E> value = Optional.ofNullable(words.get(plain(found)));
        if (value.isEmpty()) {
            notOneOf(found, List.copyOf(words.keySet()), line);
        }
        return value;
    }

    /** Notes a word that is none of those that may stand there. */
    public void notOneOf(String found, List<String> words, long line) {
        problems.add(
                place(line, ""),
                ProblemKind.NOT_ONE_OF,
                found,
                Phrase.of("problem.wanted.one-of", String.join(", ", words)),
                Words.hint(found, words));
    }

    /** The place of a cell. */
    public Place place(long line, String path) {
        return new Place(problems.file(), (int) line, 1, path);
    }

    /** What was noted so far. */
    public Problems problems() {
        return problems;
    }
}
