package org.loomproof.book.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Entries;
import org.loomproof.book.key.Key;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Refused;

/** The rows of events, and the cards that they make. */
final class EventRows {

    private final Keys keys;

    EventRows(Keys keys) {
        this.keys = keys;
    }

    void add(Handle handle, Key key, Card card, CardEvent event) {
        long at = event.at().toEpochMilli();
        String who = event.who().value();
        insert(
                handle,
                card.id(),
                event,
                Seals.sealed(
                        key,
                        event.changes(),
                        Seals.aboutEvent(card.id().value(), event.version(), at, who, event.what())));
    }

    /** An event that says that something was done, and of which there is nothing to read. */
    void addBare(Handle handle, CardId card, int version, Instant at, Author who, String what) {
        insert(handle, card, new CardEvent(version, at, who, what, Map.of()), new byte[0]);
    }

    private static void insert(Handle handle, CardId card, CardEvent event, byte[] body) {
        handle.createUpdate("INSERT INTO card_event (card, version, at, who, what, body)"
                        + " VALUES (:card, :version, :at, :who, :what, :body)")
                .bind("card", card.value())
                .bind("version", event.version())
                .bind("at", event.at().toEpochMilli())
                .bind("who", event.who().value())
                .bind("what", event.what())
                .bind("body", body)
                .execute();
    }

    /** The card after its first so many events; nothing without a key to read it. */
    Optional<Card> read(Handle handle, CardId id, int upTo) {
        List<Row> rows = rows(handle, id, upTo);
        if (rows.isEmpty() || rows.getFirst().changes().isEmpty()) {
            return Optional.empty();
        }
        Entries entries = Entries.NONE;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (row.version() != i + 1) {
                throw new Refused(Refusal.DAMAGED);
            }
            entries = entries.with(row.changes().orElseThrow());
        }
        Row last = rows.getLast();
        return Optional.of(new Card(id, last.kind(), last.customer(), last.version(), entries));
    }

    /** Every event of a card. */
    List<CardEvent> of(Handle handle, CardId id) {
        return rows(handle, id, Integer.MAX_VALUE).stream()
                .map(row -> new CardEvent(
                        row.version(),
                        Instant.ofEpochMilli(row.at()),
                        new Author(row.who()),
                        row.what(),
                        row.changes().orElse(Map.of())))
                .toList();
    }

    private List<Row> rows(Handle handle, CardId id, int upTo) {
        return handle.createQuery(
                        "SELECT c.kind, c.customer, k.wrapped, e.version, e.at, e.who, e.what, e.body FROM card c"
                                + " JOIN customer_key k ON k.customer = c.customer JOIN card_event e ON e.card = c.id"
                                + " WHERE c.id = :id AND e.version <= :most ORDER BY e.version")
                .bind("id", id.value())
                .bind("most", upTo)
                .map((row, context) -> row(id, row))
                .list();
    }

    private Row row(CardId card, ResultSet row) throws SQLException {
        CardId customer = new CardId(row.getString("customer"));
        int version = row.getInt("version");
        long at = row.getLong("at");
        String who = row.getString("who");
        String what = row.getString("what");
        byte[] body = row.getBytes("body");
        Optional<Map<String, String>> changes = Optional.ofNullable(row.getBytes("wrapped"))
                .map(wrapped -> Seals.opened(
                        keys.unwrapped(wrapped, customer),
                        body,
                        Seals.aboutEvent(card.value(), version, at, who, what)));
        return new Row(CardKind.of(row.getString("kind")), customer, version, at, who, what, changes);
    }

    /** @param changes none when the customer was erased */
    private record Row(
            CardKind kind,
            CardId customer,
            int version,
            long at,
            String who,
            String what,
            Optional<Map<String, String>> changes) {}
}
