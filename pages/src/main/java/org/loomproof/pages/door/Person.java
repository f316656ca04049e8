package org.loomproof.pages.door;

import org.loomproof.book.card.CardId;

/**
 * Somebody who is known to the book.
 *
 * @param id the card
 * @param name as others call them
 * @param role in the shop
 */
public record Person(CardId id, String name, Role role) {}
