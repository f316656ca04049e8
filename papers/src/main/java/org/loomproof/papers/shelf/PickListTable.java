package org.loomproof.papers.shelf;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.goods.shelf.Stock;

/** The pick list as comma-separated lines, under the same words as a price list. */
public final class PickListTable {

    private static final String FORMULA = "=+-@\t\r";

    private PickListTable() {}

    /** The table: {@code article,size,amount,unit,from,for}, and with a stock list {@code stock,order} besides. */
    public static String of(PickList list, Optional<Stock> stock) {
        StringWriter text = new StringWriter();
        List<String> header = new ArrayList<>(List.of("article", "size", "amount", "unit", "from", "for"));
        stock.ifPresent(shelf -> header.addAll(List.of("stock", "order")));
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setRecordSeparator('\n')
                .setHeader(header.toArray(String[]::new))
                .get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            for (Item item : list.items()) {
                printer.printRecord(cells(item, stock));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot be written", e);
        }
        return MarkupWriter.clean(text.toString());
    }

    private static List<String> cells(Item item, Optional<Stock> stock) {
        boolean boxed = item.from() == Item.From.BOX;
        List<String> cells = new ArrayList<>(List.of(
                item.article().kind().word(),
                plain(item.article().size()),
                number(item.amount()),
                item.article().kind().per() == Article.Per.METRE ? "m" : "",
                boxed ? "box" : "shelf",
                plain(String.join(" ", item.uses()))));
        stock.ifPresent(shelf -> {
            cells.add(
                    boxed
                            ? ""
                            : shelf.find(item.article())
                                    .map(PickListTable::number)
                                    .orElse(""));
            cells.add(
                    boxed ? "" : shelf.missing(item).map(PickListTable::number).orElse(""));
        });
        return cells;
    }

    private static String number(BigDecimal amount) {
        return amount.stripTrailingZeros().toPlainString();
    }

    /** A spreadsheet takes a cell that begins with such a sign for a formula; the mark before it says that it is text. */
    private static String plain(String cell) {
        return !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }
}
