package org.loomproof.book.card;

import java.time.Instant;

/**
 * A card as a list shows it.
 *
 * @param id its name
 * @param customer whose it is
 * @param stage how far a job has come; empty for other kinds
 * @param due the day a job is due, as {@code 2026-11-30}; empty when there is none
 * @param changed when it was last changed
 * @param headline the entries a list shows
 * @param customerHeadline those of the customer's card
 */
public record CardLine(
        CardId id,
        CardId customer,
        String stage,
        String due,
        Instant changed,
        Entries headline,
        Entries customerHeadline) {}
