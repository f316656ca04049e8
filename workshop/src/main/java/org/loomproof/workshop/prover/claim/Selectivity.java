package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.stream.DoubleStream;
import org.loomproof.network.part.TimeCurrentBand;
import org.loomproof.network.part.TimeCurrentBand.Edge;
import org.loomproof.network.part.TimeCurrentBand.Point;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.fuse.OpeningBand;

/**
 * Which of two blade fuses in series opens first: by the least ratio of ratings at which a maker tells fuses apart (gG, IEC 60269;
 * read), made stricter by the bands of blade fuses (ISO 8820-3), which are only remembered and lessen nothing.
 */
final class Selectivity {

    private static final List<OpeningBand> ROWS = OpeningBand.list();

    private static final TimeCurrentBand BAND = new TimeCurrentBand(ROWS.stream()
            .map(row -> new Point(
                    row.multiple(), row.earliest().value(), row.latest().value()))
            .toList());

    private static final double STEP = 0.01;

    private static final double LEAST_RATIO = DoubleStream.iterate(Fuses.selectiveRatio(), ratio -> ratio + STEP)
            .filter(Selectivity::isTold)
            .findFirst()
            .orElseThrow();

    private Selectivity() {}

    /** The least ratio of the larger rating to the smaller at which the smaller opens first, whatever the current. */
    static double leastRatio() {
        return LEAST_RATIO;
    }

    /**
     * True when at every current that makes the smaller fuse open its latest time is before the larger one's earliest. Both
     * edges are straight in logarithms between the kept multiples and fall alike beyond the last, so that only the multiples of
     * either fuse need be looked at.
     */
    private static boolean isTold(double ratio) {
        return ROWS.stream()
                .flatMapToDouble(row -> DoubleStream.of(row.multiple(), row.multiple() * ratio))
                .allMatch(multiple ->
                        BAND.seconds(multiple, Edge.LATEST) < BAND.seconds(multiple / ratio, Edge.EARLIEST));
    }
}
