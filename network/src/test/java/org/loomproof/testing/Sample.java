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
 * <p>What is made up (random networks, briefs, readings) comes from the seed: the same on every machine, {@code -Dloomproof.seed=N}
 * makes up others, and a seed that fails is kept as a test of its own. What is on a list that {@code --all} walks whole (examples,
 * screens, mishaps) is taken by turns: {@code -Dloomproof.turn=N}, which {@code ./check} counts up with every commit, so that
 * within as many turns as the list is long each has been looked at.
 */
public final class Sample {

    private static final String FULL = "loomproof.long";
    private static final String SEED = "loomproof.seed";
    private static final String TURN = "loomproof.turn";

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

    /**
     * At most so many of all, in their own order, others each turn; all of them in full. A smaller sample of the same list lies
     * within a larger one, so that tests of the same examples share what was planned and proven for them.
     */
    public static <T> List<T> of(List<T> all, int sampled) {
        return drawn(all, sampled, turn());
    }

    /** The same at every turn: for figures over a whole sample, which are held to a floor. */
    public static <T> List<T> bySeed(List<T> all, int sampled) {
        return drawn(all, sampled, 0);
    }

    private static <T> List<T> drawn(List<T> all, int sampled, long turn) {
        if (full() || all.size() <= sampled) {
            return List.copyOf(all);
        }
        List<Integer> places =
                new ArrayList<>(IntStream.range(0, all.size()).boxed().toList());
        Collections.shuffle(places, new Random(seed()));
        Collections.rotate(places, -Math.floorMod(turn, all.size()));
        return places.stream().limit(sampled).sorted().map(all::get).toList();
    }

    /** One of all, for each name another and with each turn the next; all of them in full. */
    public static <T> List<T> oneOf(List<T> all, String name) {
        return full() ? List.copyOf(all) : List.of(all.get(Math.floorMod(name.hashCode() + turn(), all.size())));
    }

    private static long turn() {
        return Long.getLong(TURN, 0);
    }

    /** The seed that everything drawn starts from. */
    public static long seed() {
        return Long.getLong(SEED, 1);
    }
}
