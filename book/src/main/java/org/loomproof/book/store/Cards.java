package org.loomproof.book.store;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.CardLine;
import org.loomproof.book.card.Entries;
import org.loomproof.book.card.Listing;
import org.loomproof.book.card.Saved;
import org.loomproof.book.key.Key;

/**
 * The cards of a book: added, changed, read as they are or as they were, listed and found. Every change is an event; a card is
 * what its events make it. When a method that changes something has returned, the change is on the disk.
 */
public final class Cards {

    private final Database database;
    private final Keys keys;
    private final Clock clock;
    private final EventRows events;
    private final CardLists lists;

    Cards(Database database, Keys keys, Clock clock) {
        this.database = database;
        this.keys = keys;
        this.clock = clock;
        this.events = new EventRows(keys);
        this.lists = new CardLists(keys);
    }

    /** A new card of the shop's own: a sheet, a kit, a person; or of a new customer. */
    public Card add(CardKind kind, Author who, String what, Map<String, String> entries) {
        if (kind.isOfCustomer()) {
            throw new IllegalArgumentException("a " + kind.word() + " is somebody's");
        }
        return database.jdbi()
                .inTransaction(handle -> kind == CardKind.CUSTOMER
                        ? addCustomer(handle, who, what, entries)
                        : insert(handle, CardId.fresh(), kind, keys.shop(), who, what, entries));
    }

    /** A new job of a customer who is there; nothing when the customer was erased meanwhile. */
    public Optional<Card> addJob(CardId customer, Author who, String what, Map<String, String> entries) {
        return database.jdbi()
                .inTransaction(handle -> keys.ofCustomer(handle, customer)
                        .map(key -> insert(handle, CardId.fresh(), CardKind.JOB, customer, who, what, entries)));
    }

    /** A new customer and a job for the same, at once or not at all. */
    public Card addCustomerWithJob(Author who, String what, Map<String, String> customer, Map<String, String> job) {
        return database.jdbi().inTransaction(handle -> {
            CardId id = addCustomer(handle, who, what, customer).id();
            return insert(handle, CardId.fresh(), CardKind.JOB, id, who, what, job);
        });
    }

    /**
     * The card that goes with another, such as a job, as its only one of a kind, empty when it was not there yet; of several who ask at
     * once all get the same. It is whose the other one is. Nothing when there is no such card.
     */
    public Optional<Card> beside(CardId other, CardKind kind, Author who, String what) {
        CardId id = CardId.beside(other, kind);
        return database.jdbi().inTransaction(handle -> {
            Optional<Card> there = events.read(handle, id, Integer.MAX_VALUE);
            return there.isPresent()
                    ? there
                    : events.read(handle, other, Integer.MAX_VALUE)
                            .flatMap(card -> insertRow(handle, id, kind, card.customer())
                                    ? Optional.of(first(handle, id, kind, card.customer(), who, what, Map.of()))
                                    : events.read(handle, id, Integer.MAX_VALUE));
        });
    }

    /**
     * Writes entries over on a card that was seen at a version.
     *
     * @param seen the version the changes were made from; when it is no longer the card's, nothing is written
     * @param changes by name; empty text takes an entry away
     */
    public Saved change(CardId id, int seen, Author who, String what, Map<String, String> changes) {
        return database.jdbi().inTransaction(handle -> {
            Optional<Card> before = events.read(handle, id, Integer.MAX_VALUE);
            if (before.isEmpty()) {
                return new Saved.Gone();
            }
            Card card = before.orElseThrow();
            if (card.version() != seen) {
                return new Saved.Overtaken(card);
            }
            Map<String, String> differing = card.entries().differing(changes);
            Card next = new Card(
                    id, card.kind(), card.customer(), seen + 1, card.entries().with(differing));
            return write(handle, next, who, what, differing)
                    ? new Saved.Done(next)
                    : new Saved.Overtaken(events.read(handle, id, Integer.MAX_VALUE)
                            .orElseThrow(() -> new IllegalStateException("a card vanished")));
        });
    }

    /**
     * Writes entries over whoever else changes the card meanwhile: what to write is made anew from the card as it is then.
     *
     * @param seen the card as it was last seen
     * @param changes by name; none when there is nothing to write, and then nothing is
     * @return done, or gone
     */
    public Saved amend(Card seen, Author who, String what, Function<Card, Map<String, String>> changes) {
        Saved saved = new Saved.Overtaken(seen);
        while (saved instanceof Saved.Overtaken(Card now)) {
            Map<String, String> wanted = changes.apply(now);
            saved = wanted.isEmpty() ? new Saved.Done(now) : change(now.id(), now.version(), who, what, wanted);
        }
        return saved;
    }

    /** The card as it is; nothing when there is none, or its customer was erased. */
    public Optional<Card> find(CardId id) {
        return at(id, Integer.MAX_VALUE);
    }

    /** The card as it was after so many changes. */
    public Optional<Card> at(CardId id, int version) {
        return database.jdbi().withHandle(handle -> events.read(handle, id, version));
    }

    /** Every change of a card, the first one first; without what was written when its customer was erased. */
    public List<CardEvent> events(CardId id) {
        return database.jdbi().withHandle(handle -> events.of(handle, id));
    }

    /** Cards for a list: what is due first on top, then by last change. */
    public List<CardLine> list(Listing listing) {
        return database.jdbi().withHandle(handle -> lists.list(handle, listing));
    }

    /** How many the list would have without its bounds. */
    public int count(Listing listing) {
        return database.jdbi().withHandle(handle -> lists.count(handle, listing));
    }

    /** The jobs of a customer. */
    public List<CardId> jobsOf(CardId customer) {
        return database.jdbi()
                .withHandle(handle -> handle.createQuery(
                                "SELECT id FROM card WHERE customer = :customer AND kind = 'job' ORDER BY begun, id")
                        .bind("customer", customer.value())
                        .map((row, context) -> new CardId(row.getString("id")))
                        .list());
    }

    /** What is a customer's own: the jobs, each with what goes with it. */
    static List<CardId> ofCustomer(Handle handle, CardId customer) {
        return handle.createQuery(
                        "SELECT id FROM card WHERE customer = :customer AND id <> :customer ORDER BY begun, kind, id")
                .bind("customer", customer.value())
                .map((row, context) -> new CardId(row.getString("id")))
                .list();
    }

    List<CardId> ofCustomer(CardId customer) {
        return database.jdbi().withHandle(handle -> ofCustomer(handle, customer));
    }

    private Card addCustomer(Handle handle, Author who, String what, Map<String, String> entries) {
        CardId id = CardId.fresh();
        keys.newCustomer(handle, id);
        return insert(handle, id, CardKind.CUSTOMER, id, who, what, entries);
    }

    Card insert(
            Handle handle,
            CardId id,
            CardKind kind,
            CardId customer,
            Author who,
            String what,
            Map<String, String> entries) {
        insertRow(handle, id, kind, customer);
        return first(handle, id, kind, customer, who, what, entries);
    }

    /** A card's row is there before its first event, at no version; false when somebody else put it there. */
    private boolean insertRow(Handle handle, CardId id, CardKind kind, CardId customer) {
        return handle.createUpdate(
                                "INSERT INTO card (id, kind, customer, version, stage, due, begun, changed, headline)"
                                        + " VALUES (:id, :kind, :customer, 0, '', '', :begun, 0, NULL)"
                                        + " ON CONFLICT (id) DO NOTHING")
                        .bind("id", id.value())
                        .bind("kind", kind.word())
                        .bind("customer", customer.value())
                        .bind(
                                "begun",
                                LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault())
                                        .toString())
                        .execute()
                == 1;
    }

    private Card first(
            Handle handle,
            CardId id,
            CardKind kind,
            CardId customer,
            Author who,
            String what,
            Map<String, String> entries) {
        Entries given = Entries.NONE.with(entries);
        Card card = new Card(id, kind, customer, 1, given);
        if (!write(handle, card, who, what, given.values())) {
            throw new IllegalStateException("somebody else knew a name that was just drawn");
        }
        return card;
    }

    /** Writes the card's row and its event; false, with nothing written, when the row is no longer at the version before. */
    private boolean write(Handle handle, Card card, Author who, String what, Map<String, String> changes) {
        Optional<Key> key = keys.ofCustomer(handle, card.customer());
        if (key.isEmpty()) {
            return false;
        }
        Instant now = clock.instant();
        if (!lists.write(handle, key.orElseThrow(), card, now)) {
            return false;
        }
        events.add(handle, key.orElseThrow(), card, new CardEvent(card.version(), now, who, what, changes));
        return true;
    }
}
