package org.loomproof.workshop.trade.fuse;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.table.Table;

/**
 * The longest that a blade fuse takes to open at any current. Between the published multiples, and beyond the last, the heat
 * that melts it (current squared times time) is taken not to grow with the current: the faster it comes, the less of it is lost
 * to the holder.
 */
public final class BladeLimits {

    /** Factory fuses above this are taken for the large, slow kind. Common practice, no published source. */
    private static final double LARGE_ABOVE_AMPS = 30;

    private record Limit(String kind, double multiple, double seconds) {

        /** Heat that surely melts it, over the square of its rating. */
        double heat() {
            return seconds * multiple * multiple;
        }
    }

    private static final List<Limit> LIMITS = Table.read(BladeLimits.class, "blade-limits.csv").listRows().stream()
            .map(row -> new Limit(row.text("kind"), row.number("multiple"), row.number("longest_s")))
            .toList();

    private BladeLimits() {}

    /**
     * The longest that a fuse of that rating takes; empty where the current is too little to open it for certain. Where only
     * bounds of the current are known it is the time at the most current that gives as much heat as the least may have to give:
     * whatever lies behind the fuse gets no hotter in between.
     */
    public static Optional<Seconds> longest(Amps rating, Amps least, Amps most) {
        String kind = rating.value() > LARGE_ABOVE_AMPS ? "large-blade" : "blade";
        double surely = least.value() / rating.value();
        double multiple = Math.max(surely, most.value() / rating.value());
        return LIMITS.stream()
                .filter(limit -> limit.kind().equals(kind) && limit.multiple() <= surely)
                .map(Limit::heat)
                .min(Double::compare)
                .map(heat -> new Seconds(heat / (multiple * multiple)));
    }
}
