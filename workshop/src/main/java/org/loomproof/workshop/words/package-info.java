/**
 * Everything a person reads, kept as a key and its arguments until the last moment.
 *
 * <p>A {@link org.loomproof.workshop.words.Phrase} crosses the rooms; {@link org.loomproof.workshop.words.Messages} turns
 * it into a sentence at the edge (terminal, paper, page). Another language is one file. May know nothing else.
 */
@NullMarked
package org.loomproof.workshop.words;

import org.jspecify.annotations.NullMarked;
