package org.loomproof.workshop.trade.fuse;

import java.util.List;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/**
 * When a blade fuse opens at a multiple of its rating. Remembered and doubtful: nothing may rest on it alone.
 *
 * @param multiple current over rating
 * @param earliest it carries so long at least
 * @param latest it has opened by then
 */
public record OpeningBand(double multiple, Seconds earliest, Seconds latest) {

    private static final List<OpeningBand> ALL = Table.read(OpeningBand.class, "bands.csv").listRows().stream()
            .map(OpeningBand::of)
            .toList();

    /** The kept rows, multiples rising. */
    public static List<OpeningBand> list() {
        return ALL;
    }

    private static OpeningBand of(Row row) {
        return new OpeningBand(
                row.number("multiple"), new Seconds(row.number("earliest_s")), new Seconds(row.number("latest_s")));
    }
}
