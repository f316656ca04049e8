package org.loomproof.papers.shelf;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;

/** The pick list as comma-separated lines, under the same words as a price list. */
public final class PickListTable {

    private static final String FORMULA = "=+-@\t\r";

    private PickListTable() {}

    /** The table: {@code article,size,amount,unit,from,for}. */
    public static String of(PickList list) {
        StringWriter text = new StringWriter();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setRecordSeparator('\n')
                .setHeader("article", "size", "amount", "unit", "from", "for")
                .get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            for (Item item : list.items()) {
                printer.printRecord(
                        item.article().kind().word(),
                        plain(item.article().size()),
                        item.amount().stripTrailingZeros().toPlainString(),
                        item.article().kind().per() == Article.Per.METRE ? "m" : "",
                        item.from() == Item.From.BOX ? "box" : "shelf",
                        plain(String.join(" ", item.uses())));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot be written", e);
        }
        return MarkupWriter.clean(text.toString());
    }

    /** A spreadsheet takes a cell that begins with such a sign for a formula; the mark before it says that it is text. */
    private static String plain(String cell) {
        return !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }
}
