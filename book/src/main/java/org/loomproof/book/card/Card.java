package org.loomproof.book.card;

/**
 * A card as it was after one of its changes.
 *
 * @param id its name
 * @param kind what it is a card of
 * @param customer whose it is: the card of a customer, itself for one; the shop's own otherwise
 * @param version how many changes made it, from 1
 * @param entries what stands on it
 */
public record Card(CardId id, CardKind kind, CardId customer, int version, Entries entries) {

    /** The text under a name; empty text when there is none. */
    public String get(String name) {
        return entries.get(name);
    }
}
