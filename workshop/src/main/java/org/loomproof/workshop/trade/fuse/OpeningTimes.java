package org.loomproof.workshop.trade.fuse;

import java.util.Comparator;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** How long a fuse may take to open. Published limits of glass fuses stand for blades, which are remembered as faster. */
public final class OpeningTimes {
    private static final Table TABLE = Table.read(OpeningTimes.class, "opening.csv");

    private OpeningTimes() {}

    /** The least multiple of its rating at which a fuse surely opens at all. */
    public static double surely() {
        return TABLE.listRows().stream()
                .map(row -> row.number("multiple"))
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The multiple of its rating at which a fuse opens within minutes; a short must give at least this. */
    public static double soon() {
        return TABLE.listRows().stream()
                .map(row -> row.number("multiple"))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /**
     * The longest a fuse may take at a multiple of its rating: that of the next lower multiple with a published limit.
     *
     * @throws IllegalArgumentException under {@link #surely()}, where it need not open
     */
    public static Seconds longest(double multiple) {
        return new Seconds(TABLE.listRows().stream()
                .filter(row -> row.number("multiple") <= multiple)
                .map(OpeningTimes::seconds)
                .min(Comparator.naturalOrder())
                .orElseThrow(() -> new IllegalArgumentException("at " + multiple + " a fuse need not open")));
    }

    private static double seconds(Row row) {
        return row.number("longest_s");
    }
}
