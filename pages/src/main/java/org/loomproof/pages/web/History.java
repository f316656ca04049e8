package org.loomproof.pages.web;

import java.time.Instant;

/**
 * One line of a card's past.
 *
 * @param at when
 * @param who their name; empty text for the console
 * @param key what was done, in the message files
 */
public record History(Instant at, String who, String key) {}
