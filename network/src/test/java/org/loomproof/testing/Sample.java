package org.loomproof.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * How much of a large space a test walks: a seeded sample in everyday work, all of it with {@code ./check --all}.
 *
 * <p>The same seed draws the same sample on every machine. {@code -Dloomproof.seed=N} draws another one; a seed that fails
 * is kept as a test of its own.
 */
public final class Sample {

    private static final String FULL = "loomproof.long";
    private static final String SEED = "loomproof.seed";

    private Sample() {}

    /** True when long tests run in full. */
    public static boolean full() {
        return Boolean.getBoolean(FULL);
    }

    /** How many cases to draw: few in everyday work, many in full. */
    public static int count(int sampled, int inFull) {
        return full() ? inFull : sampled;
    }

    /** One seed a case, for {@code @ParameterizedTest}: a case that fails then shows its seed in its name. */
    public static LongStream seeds(int sampled, int inFull) {
        long first = seed();
        return LongStream.range(first, first + count(sampled, inFull));
    }

    /** At most so many of all, in their own order; all of them in full. */
    public static <T> List<T> of(List<T> all, int sampled) {
        if (full() || all.size() <= sampled) {
            return List.copyOf(all);
        }
        List<Integer> places =
                new ArrayList<>(IntStream.range(0, all.size()).boxed().toList());
        Collections.shuffle(places, new Random(seed()));
        return places.stream().limit(sampled).sorted().map(all::get).toList();
    }

    /** The seed that everything drawn starts from. */
    public static long seed() {
        return Long.getLong(SEED, 1);
    }
}
