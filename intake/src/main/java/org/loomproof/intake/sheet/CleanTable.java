package org.loomproof.intake.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.decode.Passage;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.brief.write.SheetWriter;

/**
 * Entries as a clean table: comma-separated by RFC 4180, one entry a row, with a word or figure of ours in every cell. It reads back without
 * loss: each row gives the same cells again. The table is also one that {@code read-sheet} understands like any other.
 */
public final class CleanTable {

    private static final List<String> COLUMNS = List.of(
            "circuit",
            "role",
            "colour",
            "size",
            "polarity",
            "rest",
            "active",
            "location",
            "connector",
            "pin",
            "steering",
            "validity",
            "marks",
            "certainty",
            "origin",
            "note");
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader(COLUMNS.toArray(String[]::new))
            .setRecordSeparator("\n")
            .get();
    private static final CSVFormat READING =
            FORMAT.builder().setSkipHeaderRecord(true).get();

    /** The mark of an entry that its writer was not sure of. */
    static final String DOUBTED = "doubted";

    /** The mark of an entry that says there is no such circuit. */
    static final String ABSENT = "absent";

    private CleanTable() {}

    /**
     * One row.
     *
     * @param cells as many as there are columns, in their order; empty where nothing is known
     */
    public record Row(List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
            if (cells.size() != COLUMNS.size()) {
                throw new IllegalArgumentException(cells.size() + " cells under " + COLUMNS.size() + " columns");
            }
        }
    }

    /** The columns, from left to right. */
    public static List<String> listColumns() {
        return COLUMNS;
    }

    /** The row of an entry of notes known under the name {@code file}. */
    public static Row row(Entry entry, String file) {
        return new Row(List.of(
                entry.name(),
                entry.role().map(a -> a.value().role().word()).orElse(""),
                entry.colour().map(a -> SheetWriter.colour(a.value())).orElse(entry.colourAsWritten()),
                entry.size()
                        .map(a -> String.format(Locale.ROOT, "%s mm2", a.value().value()))
                        .orElse(""),
                entry.behaviour().map(a -> Words.of(a.value().kind())).orElse(""),
                entry.behaviour()
                        .flatMap(a -> a.value().rest())
                        .map(SheetWriter::level)
                        .orElse(""),
                entry.behaviour()
                        .flatMap(a -> a.value().active())
                        .map(SheetWriter::level)
                        .orElse(""),
                entry.spot().map(a -> a.value().panel()).orElse(""),
                entry.spot().map(a -> a.value().connector()).orElse(""),
                entry.spot().map(a -> a.value().cavity()).orElse(""),
                entry.steering(),
                entry.validity(),
                marks(entry),
                String.format(Locale.ROOT, "%.0f %%", entry.sure() * 100),
                file + " " + entry.origin(),
                note(entry)));
    }

    private static String marks(Entry entry) {
        return (entry.doubted() ? DOUBTED : "")
                + (entry.doubted() && entry.absent() ? " " : "")
                + (entry.absent() ? ABSENT : "");
    }

    private static String note(Entry entry) {
        List<String> notes = new ArrayList<>();
        entry.notes().stream().map(Passage::text).forEach(notes::add);
        entry.leftOver().stream().map(Passage::text).forEach(notes::add);
        return String.join("; ", notes);
    }

    /** The rows as a table. */
    public static String write(List<Row> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            for (Row row : rows) {
                printer.printRecord(row.cells());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a table in memory cannot be written", e);
        }
        return text.toString();
    }

    /** The rows of a table of ours; nothing when the text is none. */
    public static Optional<List<Row>> read(String text) {
        if (!text.startsWith(String.join(",", COLUMNS) + "\n")) {
            return Optional.empty();
        }
        try (CSVParser parser = CSVParser.parse(new StringReader(text), READING)) {
            List<Row> rows = new ArrayList<>();
            for (CSVRecord line : parser) {
                if (line.size() != COLUMNS.size()) {
                    return Optional.empty();
                }
                rows.add(new Row(line.toList()));
            }
            return Optional.of(rows);
        } catch (IOException | UncheckedIOException e) {
            return Optional.empty();
        }
    }
}
