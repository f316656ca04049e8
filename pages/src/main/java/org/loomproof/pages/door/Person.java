package org.loomproof.pages.door;

import org.loomproof.book.card.CardId;

/**
 * Somebody who is known to the book.
 *
 * @param id the card
 * @param name as others call them
 * @param role in the shop
 * @param isTold true while their password is one that somebody else told them
 */
public record Person(CardId id, String name, Role role, boolean isTold) {}
