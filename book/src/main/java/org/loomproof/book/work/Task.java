package org.loomproof.book.work;

import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;

/**
 * A piece of long work. Of one kind about one subject there is one at a time, on whichever server.
 *
 * @param kind what is to be done
 * @param subject names of cards only: it stands in the clear
 * @param id its own name, the same when it is taken up again: by it a worker knows what it has kept already
 * @param who asked for it
 * @param language a tag: in which language it is to be written down
 */
public record Task(String kind, String subject, CardId id, Author who, String language) {

    /** A new one. */
    public static Task asked(String kind, String subject, Author who, String language) {
        return new Task(kind, subject, CardId.fresh(), who, language);
    }
}
