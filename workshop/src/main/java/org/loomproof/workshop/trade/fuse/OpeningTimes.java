package org.loomproof.workshop.trade.fuse;

import java.util.Comparator;
import java.util.List;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.table.Table;

/** How long a fuse may take to open. Published limits of glass fuses stand for blades, which are remembered as faster. */
public final class OpeningTimes {

    /** A published limit: the longest that a fuse takes at that multiple of its rating, in seconds. */
    private record Limit(double multiple, double seconds) {}

    private static final List<Limit> LIMITS = Table.read(OpeningTimes.class, "opening.csv").listRows().stream()
            .map(row -> new Limit(row.number("multiple"), row.number("longest_s")))
            .sorted(Comparator.comparingDouble(Limit::multiple))
            .toList();

    private OpeningTimes() {}

    /** The least multiple of its rating at which a fuse surely opens at all. */
    public static double surely() {
        return LIMITS.getFirst().multiple();
    }

    /** The multiple of its rating at which a fuse opens within minutes; a short must give at least this. */
    public static double soon() {
        return LIMITS.getLast().multiple();
    }

    /**
     * The longest a fuse may take at a multiple of its rating: that of the next lower multiple with a published limit.
     *
     * @throws IllegalArgumentException under {@link #surely()}, where it need not open
     */
    public static Seconds longest(double multiple) {
        return new Seconds(LIMITS.stream()
                .filter(limit -> limit.multiple() <= multiple)
                .mapToDouble(Limit::seconds)
                .min()
                .orElseThrow(() -> new IllegalArgumentException("at " + multiple + " a fuse need not open")));
    }
}
