package org.loomproof.book.card;

import java.util.Optional;

/**
 * Which cards to list.
 *
 * @param kind of which kind
 * @param stage only those of jobs at this stage, when given
 * @param words only those that have every word of this text; a day such as {@code 2026-11-30} finds what is due or was begun then
 * @param from how many to pass over
 * @param most how many at most
 */
public record Listing(CardKind kind, Optional<String> stage, String words, int from, int most) {

    /** All of a kind, the first so many. */
    public static Listing all(CardKind kind, int most) {
        return new Listing(kind, Optional.empty(), "", 0, most);
    }

    /** Those found by words. */
    public Listing foundBy(String text) {
        return new Listing(kind, stage, text, from, most);
    }

    /** Those at a stage. */
    public Listing at(String name) {
        return new Listing(kind, Optional.of(name), words, from, most);
    }

    /** The next ones. */
    public Listing after(int passedOver) {
        return new Listing(kind, stage, words, passedOver, most);
    }
}
