package org.loomproof.book.store;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jdbi.v3.core.Handle;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.key.Key;

/** Photos, papers and signatures that belong to cards: sealed under the key of the card's customer. */
public final class Attachments {

    /**
     * What is known of one without opening it.
     *
     * @param id its name
     * @param card to which it belongs
     * @param at when it was put there
     * @param who by whom
     * @param label what it is, such as a file's kind and title
     */
    public record Label(CardId id, CardId card, Instant at, Author who, String label) {}

    private final Database database;
    private final Keys keys;
    private final Clock clock;

    Attachments(Database database, Keys keys, Clock clock) {
        this.database = database;
        this.keys = keys;
        this.clock = clock;
    }

    /** Keeps bytes with a card; nothing is kept when the card is gone. */
    public Optional<CardId> add(CardId card, Author who, String label, byte[] bytes) {
        return database.jdbi()
                .inTransaction(handle -> keyOf(handle, card).map(key -> {
                    CardId id = CardId.fresh();
                    handle.createUpdate("INSERT INTO attachment (id, card, at, who, label, body)"
                                    + " VALUES (:id, :card, :at, :who, :label, :body)")
                            .bind("id", id.value())
                            .bind("card", card.value())
                            .bind("at", clock.millis())
                            .bind("who", who.value())
                            .bind("label", key.seal(label.getBytes(StandardCharsets.UTF_8), aboutLabel(id, card)))
                            .bind("body", key.seal(bytes, aboutBody(id, card)))
                            .execute();
                    return id;
                }));
    }

    /** Takes away what belongs to a card and is not wanted, for good; how many that were. */
    public int drop(CardId card, Predicate<Label> unwanted) {
        List<String> gone = of(card).stream()
                .filter(unwanted)
                .map(label -> label.id().value())
                .toList();
        return gone.isEmpty()
                ? 0
                : database.jdbi()
                        .inTransaction(handle -> handle.createUpdate(
                                        "DELETE FROM attachment WHERE card = :card AND id IN (<gone>)")
                                .bind("card", card.value())
                                .bindList("gone", gone)
                                .execute());
    }

    /** What belongs to a card, the oldest first. */
    public List<Label> of(CardId card) {
        return database.jdbi()
                .withHandle(handle -> keyOf(handle, card)
                        .map(key -> labels(handle, card, key))
                        .orElse(List.of()));
    }

    /** The bytes of one. */
    public Optional<byte[]> open(CardId card, CardId id) {
        return database.jdbi()
                .withHandle(handle -> keyOf(handle, card)
                        .flatMap(key -> handle.createQuery(
                                        "SELECT body FROM attachment WHERE id = :id AND card = :card")
                                .bind("id", id.value())
                                .bind("card", card.value())
                                .mapTo(byte[].class)
                                .findOne()
                                .map(body -> Seals.bytes(key, body, aboutBody(id, card)))));
    }

    private static List<Label> labels(Handle handle, CardId card, Key key) {
        return handle.createQuery("SELECT id, at, who, label FROM attachment WHERE card = :card ORDER BY at, id")
                .bind("card", card.value())
                .map((row, context) -> {
                    CardId id = new CardId(row.getString("id"));
                    return new Label(
                            id,
                            card,
                            Instant.ofEpochMilli(row.getLong("at")),
                            new Author(row.getString("who")),
                            Seals.text(key, row.getBytes("label"), aboutLabel(id, card)));
                })
                .list();
    }

    private Optional<Key> keyOf(Handle handle, CardId card) {
        return handle.createQuery("SELECT customer FROM card WHERE id = :card")
                .bind("card", card.value())
                .mapTo(String.class)
                .findOne()
                .flatMap(customer -> keys.ofCustomer(handle, new CardId(customer)));
    }

    private static String aboutLabel(CardId id, CardId card) {
        return "label %s of %s".formatted(id, card);
    }

    private static String aboutBody(CardId id, CardId card) {
        return "attachment %s of %s".formatted(id, card);
    }
}
