package org.loomproof.pages.desk;

import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.store.OpenBook;

/**
 * What many jobs came to, on one card of the shop's own, so that it is read without reading the jobs: an entry a job, under the job's
 * name, which says nothing of whose it is. Told again it is not counted again.
 */
final class JobTally {

    private JobTally() {}

    /** Writes what a job came to; empty text takes it away. */
    static void write(OpenBook book, Optional<Card> tally, Card job, String said, Author who) {
        String name = job.id().value();
        tally.ifPresent(card -> book.cards()
                .amend(card, who, "tally.counted", now -> now.get(name).equals(said) ? Map.of() : Map.of(name, said)));
    }
}
