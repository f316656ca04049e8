package org.loomproof.pages.work;

import java.time.Instant;
import org.loomproof.book.card.Author;

/**
 * An entry as the book keeps it.
 *
 * @param entry as it was written
 * @param who sent it
 * @param at when it reached the book
 */
public record Noted(Entry entry, Author who, Instant at) {

    /** What was done. */
    public Work work() {
        return entry.work();
    }

    /** The entry's name. */
    public String id() {
        return entry.id();
    }
}
