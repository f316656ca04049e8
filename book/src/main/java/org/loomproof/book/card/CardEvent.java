package org.loomproof.book.card;

import java.time.Instant;
import java.util.Map;

/**
 * One change of a card.
 *
 * @param version of the card after it
 * @param at when, to the millisecond
 * @param who the card of the person, or {@link Author#CONSOLE}
 * @param what was done, as a key of the message files after {@code event.}
 * @param changes the entries it wrote; empty text took one away; nothing left to read when the customer was erased
 */
public record CardEvent(int version, Instant at, Author who, String what, Map<String, String> changes) {
    public CardEvent {
        changes = Map.copyOf(changes);
    }
}
