package org.loomproof.workshop.goods.price;

import java.util.Map;
import java.util.Optional;

/**
 * How long work took in this shop, kind by kind.
 *
 * @param spreads of the kinds that were timed
 */
public record History(Map<Work, Spread> spreads) {

    /** Of a shop that timed nothing. */
    public static final History NONE = new History(Map.of());

    /** Fewer timings have no quartiles worth the name; common practice, no published source. */
    public static final int LEAST_TIMINGS = 5;

    public History {
        spreads = Map.copyOf(spreads);
    }

    /** The spread of a kind that was timed often enough to go by. */
    public Optional<Spread> find(Work work) {
        return Optional.ofNullable(spreads.get(work)).filter(spread -> spread.count() >= LEAST_TIMINGS);
    }
}
