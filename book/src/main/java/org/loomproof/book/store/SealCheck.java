package org.loomproof.book.store;

import java.time.Clock;
import java.util.concurrent.atomic.AtomicLong;
import org.jdbi.v3.core.Handle;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;

/** Opens everything that can be opened: a bit that changed anywhere does not go unnoticed. */
final class SealCheck {

    private final Database database;
    private final Keys keys;

    SealCheck(Database database, Keys keys) {
        this.database = database;
        this.keys = keys;
    }

    /** How many seals were opened. Throws {@link org.loomproof.book.place.Refused} at the first that does not open. */
    long count() {
        return database.jdbi().withHandle(handle -> headlines(handle) + events(handle) + attachments(handle));
    }

    private long headlines(Handle handle) {
        CardLists lists = new CardLists(keys);
        long opened = 0;
        for (CardKind kind : CardKind.values()) {
            opened += lists.list(handle, Listing.all(kind, Integer.MAX_VALUE)).size();
        }
        return opened;
    }

    private long events(Handle handle) {
        EventRows rows = new EventRows(keys);
        AtomicLong opened = new AtomicLong();
        handle.createQuery("SELECT id FROM card").mapTo(String.class).stream()
                .map(CardId::new)
                .forEach(id ->
                        rows.read(handle, id, Integer.MAX_VALUE).ifPresent(card -> opened.addAndGet(card.version())));
        return opened.get();
    }

    private long attachments(Handle handle) {
        AtomicLong opened = new AtomicLong();
        Attachments attachments = new Attachments(database, keys, Clock.systemUTC());
        handle.createQuery("SELECT id, card FROM attachment")
                .map((row, context) ->
                        new CardId[] {new CardId(row.getString("card")), new CardId(row.getString("id"))})
                .list()
                .forEach(one -> attachments.open(one[0], one[1]).ifPresent(bytes -> opened.incrementAndGet()));
        return opened.get();
    }
}
