package org.loomproof.workshop.prover.verdict;

import org.loomproof.workshop.words.Phrase;

/**
 * A danger that is left although every claim holds, to be met by care in the work.
 *
 * @param id stable, made of ids
 * @param what it is, and what is done about it
 */
public record Residual(String id, Phrase what) {}
