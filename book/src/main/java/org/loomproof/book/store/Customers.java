package org.loomproof.book.store;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;

/** What a customer may ask of the shop: everything it keeps about them, and to be forgotten. */
public final class Customers {

    /**
     * A card with its whole past and what belongs to it.
     *
     * @param card as it is
     * @param events by which it became so
     * @param attachments what belongs to it
     */
    public record Whole(Card card, List<CardEvent> events, List<Attachments.Label> attachments) {
        public Whole {
            events = List.copyOf(events);
            attachments = List.copyOf(attachments);
        }
    }

    private final Database database;
    private final Keys keys;
    private final Cards cards;
    private final Attachments attachments;
    private final EventRows events;
    private final Clock clock;

    Customers(Database database, Keys keys, Cards cards, Attachments attachments, Clock clock) {
        this.database = database;
        this.keys = keys;
        this.cards = cards;
        this.attachments = attachments;
        this.events = new EventRows(keys);
        this.clock = clock;
    }

    /** Everything kept about a customer: the customer's card first, then the jobs with
     * what was done at them. Empty when there is no such customer. */
    public List<Whole> everything(CardId customer) {
        List<CardId> all = new ArrayList<>(List.of(customer));
        all.addAll(cards.ofCustomer(customer));
        return all.stream()
                .flatMap(id -> cards.find(id).stream())
                .filter(card -> card.customer().equals(customer))
                .map(card -> new Whole(card, cards.events(card.id()), attachments.of(card.id())))
                .toList();
    }

    /**
     * Forgets a customer: destroys the key, so that nothing sealed under it can be read again, and deletes photos, papers and
     * search words. What warranty law may ask for stays as cards of the shop's own, without person, plate, number or place.
     *
     * <p>A backup made before still holds the key: erase there too, or let it lapse.
     *
     * @return the cards that stay, to be told to whoever asked; none when there is no such customer
     */
    public List<Card> erase(CardId customer, Author who) {
        List<Card> remains = database.jdbi().inTransaction(handle -> {
            if (customer.equals(keys.shop())
                    || keys.ofCustomer(handle, customer).isEmpty()) {
                return List.of();
            }
            Instant now = clock.instant();
            List<Card> kept = new ArrayList<>();
            for (CardId job : Cards.ofCustomer(handle, customer)) {
                events.read(handle, job, Integer.MAX_VALUE)
                        .filter(card -> card.kind() == CardKind.JOB)
                        .flatMap(card -> keep(handle, card, who))
                        .ifPresent(kept::add);
                forget(handle, job, who, now);
            }
            forget(handle, customer, who, now);
            handle.createUpdate("UPDATE customer_key SET wrapped = NULL, erased = :at WHERE customer = :customer")
                    .bind("at", now.toEpochMilli())
                    .bind("customer", customer.value())
                    .execute();
            return List.copyOf(kept);
        });
        database.forget();
        return remains;
    }

    private Optional<Card> keep(Handle handle, Card job, Author who) {
        Map<String, String> kept = job.entries().only(CardKind.kept()).values();
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(cards.insert(
                        handle, CardId.fresh(), CardKind.REMAINS, keys.shop(), who, "customer.erased", kept));
    }

    private void forget(Handle handle, CardId card, Author who, Instant now) {
        CardLists.forget(handle, card);
        handle.createUpdate("DELETE FROM attachment WHERE card = :card")
                .bind("card", card.value())
                .execute();
        handle.createUpdate("UPDATE card SET version = version + 1, headline = NULL, changed = :at WHERE id = :card")
                .bind("at", now.toEpochMilli())
                .bind("card", card.value())
                .execute();
        int version = handle.createQuery("SELECT version FROM card WHERE id = :card")
                .bind("card", card.value())
                .mapTo(Integer.class)
                .one();
        events.addBare(handle, card, version, now, who, "customer.erased");
    }
}
