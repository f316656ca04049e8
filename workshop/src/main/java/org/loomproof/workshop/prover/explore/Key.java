package org.loomproof.workshop.prover.explore;

import java.util.Comparator;

/** The place of a situation in its space: indices of condition, supply point and combination of positions. */
public record Key(int condition, int supply, int positions) implements Comparable<Key> {

    private static final Comparator<Key> ORDER = Comparator.comparingInt(Key::condition)
            .thenComparingInt(Key::supply)
            .thenComparingInt(Key::positions);

    @Override
    public int compareTo(Key other) {
        return ORDER.compare(this, other);
    }
}
