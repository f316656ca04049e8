package org.loomproof.workshop.goods.shelf;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;

/** Reads what lies on the shelf: comma-separated lines {@code article,size,count} under the words of the pick list. */
public final class StockReader {

    private static final List<String> HEADER = List.of("article", "size", "count");

    private StockReader() {}

    /** The stock in the file, or every problem in it. */
    public static Checked<Stock> read(Path file) {
        return CsvLines.read(file, StockReader::read);
    }

    /** The stock in the text, or every problem in it. */
    public static Checked<Stock> read(SourceText text) {
        CsvLines lines = new CsvLines(text.name(), HEADER);
        Map<Article, BigDecimal> counts = new HashMap<>();
        for (CsvLines.Line line : lines.of(text.text())) {
            String word = line.cells().getFirst();
            String size = line.cells().get(1);
            var kind = lines.word(Article.Kind.class, word, line.number());
            var count = lines.decimal(line.cells().getLast(), word, line.number());
            boolean isNew = lines.isNew(word + "," + Article.plain(size), word + " " + size, line);
            if (kind.isPresent() && count.isPresent() && isNew) {
                counts.put(new Article(kind.get(), Article.plain(size)), count.get());
            }
        }
        return lines.problems().orElse(new Stock(counts));
    }
}
