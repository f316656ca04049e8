package org.loomproof.book.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.CardLine;
import org.loomproof.book.card.Entries;
import org.loomproof.book.card.Listing;
import org.loomproof.book.key.Key;

/** The rows of cards that lists are made of, with the marks by which they are found. Only the lines shown are opened. */
final class CardLists {

    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    private final Keys keys;
    private final SearchWords words;

    CardLists(Keys keys) {
        this.keys = keys;
        this.words = new SearchWords(keys.words());
    }

    /** Brings a card's row to the card's version; false, with nothing written, when it is not at the version before. */
    boolean write(Handle handle, Key key, Card card, Instant now) {
        String id = card.id().value();
        Entries headline = card.entries().only(card.kind().headline());
        int rows = handle.createUpdate("UPDATE card SET version = :version, stage = :stage, due = :due,"
                        + " changed = :changed, headline = :headline WHERE id = :id AND version = :before")
                .bind("version", card.version())
                .bind("stage", card.get("stage"))
                .bind("due", card.get("due"))
                .bind("changed", now.toEpochMilli())
                .bind("headline", Seals.sealed(key, headline.values(), Seals.aboutHeadline(id)))
                .bind("id", id)
                .bind("before", card.version() - 1)
                .execute();
        if (rows == 1) {
            forget(handle, card.id());
            mark(handle, card);
        }
        return rows == 1;
    }

    /** Takes away the marks of a card. */
    static void forget(Handle handle, CardId card) {
        handle.createUpdate("DELETE FROM card_word WHERE card = :card")
                .bind("card", card.value())
                .execute();
    }

    private void mark(Handle handle, Card card) {
        List<byte[]> marks = words.of(card.kind(), card.entries());
        if (!marks.isEmpty()) {
            PreparedBatch batch = handle.prepareBatch("INSERT INTO card_word (mark, card) VALUES (:mark, :card)");
            marks.forEach(mark ->
                    batch.bind("mark", mark).bind("card", card.id().value()).add());
            batch.execute();
        }
    }

    List<CardLine> list(Handle handle, Listing listing) {
        Question question = asked(listing);
        Query query = handle.createQuery(
                "SELECT c.id, c.customer, c.stage, c.due, c.changed, c.headline, k.wrapped, p.headline AS whose FROM card c"
                        + " JOIN customer_key k ON k.customer = c.customer"
                        + " LEFT JOIN card p ON p.id = c.customer AND p.id <> c.id WHERE " + question.sql()
                        + " ORDER BY CASE WHEN c.due = '' THEN 1 ELSE 0 END, c.due, c.changed DESC, c.id"
                        + " LIMIT :most OFFSET :from");
        question.binds().forEach(query::bind);
        return query.bind("most", listing.most())
                .bind("from", listing.from())
                .map((row, context) -> {
                    CardId customer = new CardId(row.getString("customer"));
                    String id = row.getString("id");
                    Key key = keys.unwrapped(row.getBytes("wrapped"), customer);
                    byte[] whose = row.getBytes("whose");
                    return new CardLine(
                            new CardId(id),
                            customer,
                            row.getString("stage"),
                            row.getString("due"),
                            Instant.ofEpochMilli(row.getLong("changed")),
                            opened(key, row.getBytes("headline"), id),
                            whose == null ? Entries.NONE : opened(key, whose, customer.value()));
                })
                .list();
    }

    int count(Handle handle, Listing listing) {
        Question question = asked(listing);
        Query query = handle.createQuery("SELECT COUNT(*) FROM card c WHERE " + question.sql());
        question.binds().forEach(query::bind);
        return query.mapTo(Integer.class).one();
    }

    private static Entries opened(Key key, byte[] headline, String id) {
        return Entries.of(Seals.opened(key, headline, Seals.aboutHeadline(id)));
    }

    /** Conditions as they stand after WHERE, and what goes into their holes. */
    private record Question(String sql, Map<String, Object> binds) {}

    private Question asked(Listing listing) {
        List<String> conditions = new ArrayList<>(List.of("c.kind = :kind", "c.headline IS NOT NULL"));
        Map<String, Object> binds = new LinkedHashMap<>();
        binds.put("kind", listing.kind().word());
        listing.stage().ifPresent(stage -> {
            conditions.add("c.stage = :stage");
            binds.put("stage", stage);
        });
        String text = listing.words().strip();
        if (DAY.matcher(text).matches()) {
            conditions.add("c.id IN (SELECT d.id FROM card d WHERE d.due = :day UNION"
                    + " SELECT b.id FROM card b WHERE b.begun = :day)");
            binds.put("day", text);
        } else if (!text.isEmpty()) {
            List<List<byte[]>> asked = words.asked(listing.kind(), text);
            if (asked.isEmpty()) {
                conditions.add("1 = 0"); // a question without a word finds nothing
            }
            for (List<byte[]> oneIsEnough : asked) {
                conditions.add(found(oneIsEnough, listing.kind(), binds));
            }
        }
        return new Question(String.join(" AND ", conditions), binds);
    }

    /** A job is found by its customer's words too. */
    private static String found(List<byte[]> oneIsEnough, CardKind kind, Map<String, Object> binds) {
        List<String> holes = new ArrayList<>();
        for (byte[] mark : oneIsEnough) {
            String hole = "mark" + binds.size();
            binds.put(hole, mark);
            holes.add(":" + hole);
        }
        String marked = "SELECT w.card FROM card_word w WHERE w.mark IN (" + String.join(", ", holes) + ")";
        // One set of names, so that the rows are looked up by it instead of every row being asked whether it is in.
        String theirs = "SELECT j.id FROM card j WHERE j.customer IN (" + marked + ")";
        return "c.id IN (" + (kind == CardKind.JOB ? marked + " UNION " + theirs : marked) + ")";
    }
}
