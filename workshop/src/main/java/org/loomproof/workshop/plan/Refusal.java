package org.loomproof.workshop.plan;

import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.words.Phrase;

/**
 * A wish turned down, with the reason and what would make it possible.
 *
 * @param wish which
 * @param because why it must not or cannot be done
 * @param possibleIf what would make it possible, or the nearest safe alternative
 */
public record Refusal(Wish wish, Phrase because, Phrase possibleIf) {}
