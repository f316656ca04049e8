package org.loomproof.intake.correct;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * What a shop remembers of its corrections, and how often it made each. Kept as comma-separated lines {@code field,written,means,times}.
 *
 * @param lines each correction once, the latest last
 */
public record ShopMemory(List<Line> lines) {

    private static final List<String> HEADER = List.of("field", "written", "means", "times");
    private static final BigDecimal MOST_TIMES = BigDecimal.valueOf(1_000_000);

    /**
     * One correction that was made.
     *
     * @param times how often, at least once
     */
    public record Line(Correction correction, int times) {}

    public ShopMemory {
        lines = List.copyOf(lines);
    }

    /** The memory of a shop that has corrected nothing yet. */
    public static ShopMemory empty() {
        return new ShopMemory(List.of());
    }

    /** This memory and one correction more. A text that is empty teaches nothing. */
    public ShopMemory with(Correction correction) {
        if (correction.written().isEmpty() || correction.means().isEmpty()) {
            return this;
        }
        List<Line> more = new ArrayList<>();
        int before = 0;
        for (Line line : lines) {
            if (line.correction().equals(correction)) {
                before = line.times();
            } else {
                more.add(line);
            }
        }
        more.add(new Line(correction, before + 1));
        return new ShopMemory(more);
    }

    /** What the shop said most about the field of such an entry; of several said as often, the latest. */
    public Optional<Suggestion> suggestion(Entry entry, Field field) {
        String written = Correction.key(Correction.written(entry, field));
        List<Line> about = lines.stream()
                .filter(line -> line.correction().field() == field
                        && line.correction().written().equals(written))
                .toList();
        int all = about.stream().mapToInt(Line::times).sum();
        return about.reversed().stream()
                .max(Comparator.comparingInt(Line::times).thenComparingInt(line -> about.indexOf(line)))
                .map(line -> new Suggestion(line.correction(), line.times(), all));
    }

    /** As comma-separated lines, to be kept in a file. */
    public String write() {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(
                text, CSVFormat.RFC4180.builder().setRecordSeparator("\n").get())) {
            printer.printRecord(HEADER);
            for (Line line : lines) {
                Correction c = line.correction();
                printer.printRecord(Words.of(c.field()), c.written(), c.means(), line.times());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a memory cannot be written to memory", e);
        }
        return text.toString();
    }

    /** The memory in such lines, or every problem in them. */
    public static Checked<ShopMemory> read(SourceText text) {
        CsvLines lines = new CsvLines(text.name(), HEADER);
        List<Line> read = new ArrayList<>();
        for (CsvLines.Line line : lines.of(text.text())) {
            line(line, lines).ifPresent(read::add);
        }
        return lines.problems().orElse(new ShopMemory(read));
    }

    private static Optional<Line> line(CsvLines.Line line, CsvLines lines) {
        List<String> cells = line.cells();
        Optional<Field> field = lines.word(Field.class, cells.get(0), line.number());
        Optional<BigDecimal> times = lines.decimal(cells.get(3), "times", line.number());
        if (times.filter(t -> t.stripTrailingZeros().scale() > 0 || t.signum() == 0 || t.compareTo(MOST_TIMES) > 0)
                .isPresent()) {
            lines.problems()
                    .add(
                            lines.place(line.number(), "times"),
                            ProblemKind.OUT_OF_RANGE,
                            cells.get(3),
                            Phrase.of("problem.wanted.whole-between", "1", MOST_TIMES.toPlainString()));
            return Optional.empty();
        }
        if (field.isEmpty() || times.isEmpty()) {
            return Optional.empty();
        }
        Correction correction = new Correction(field.get(), cells.get(1), cells.get(2));
        boolean isNew =
                lines.isNew(field.get() + "," + correction.written() + "," + correction.means(), cells.get(1), line);
        return isNew ? Optional.of(new Line(correction, times.get().intValue())) : Optional.empty();
    }
}
