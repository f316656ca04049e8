package org.loomproof.workshop.goods.price;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;

/** Reads how long work took: comma-separated lines {@code work,minutes}, one for each time it was done. */
public final class HistoryReader {

    private static final List<String> HEADER = List.of("work", "minutes");

    private HistoryReader() {}

    /** The history in the file, or every problem in it. */
    public static Checked<History> read(Path file) {
        return CsvLines.read(file, HistoryReader::read);
    }

    /** The history in the text, or every problem in it. */
    public static Checked<History> read(SourceText text) {
        CsvLines lines = new CsvLines(text.name(), HEADER);
        Map<Work, List<BigDecimal>> timings = new EnumMap<>(Work.class);
        for (CsvLines.Line line : lines.of(text.text())) {
            String work = line.cells().getFirst();
            var kind = lines.word(Work.class, work, line.number());
            var minutes = lines.decimal(line.cells().getLast(), work, line.number());
            if (kind.isPresent() && minutes.isPresent()) {
                timings.computeIfAbsent(kind.get(), k -> new ArrayList<>()).add(minutes.get());
            }
        }
        Map<Work, Spread> spreads = new EnumMap<>(Work.class);
        timings.forEach((work, minutes) -> spreads.put(work, Spread.of(minutes)));
        return lines.problems().orElse(new History(spreads));
    }
}
