package org.loomproof.intake.field;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** What was found out about a word, so that a word that comes a thousand times is looked up once. Bounded: later words are looked up each time. */
public final class Memo<V> {

    private static final int MOST_WORDS = 20_000;

    private final Map<String, V> known = new ConcurrentHashMap<>();
    private final Function<String, V> lookUp;

    /** @param lookUp gives the same answer for the same word */
    public Memo(Function<String, V> lookUp) {
        this.lookUp = lookUp;
    }

    /** What is known of the word. */
    public V of(String word) {
        V found = known.get(word);
        if (found == null) {
            found = lookUp.apply(word);
            if (known.size() < MOST_WORDS) {
                known.put(word, found);
            }
        }
        return found;
    }
}
