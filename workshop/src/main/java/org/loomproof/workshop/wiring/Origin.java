package org.loomproof.workshop.wiring;

import org.loomproof.workshop.words.Phrase;

/**
 * Where a part of the network comes from, in the reader's words.
 *
 * @param what such as "fuse F1 of circuit starter", "relay K1 of the plan", "lead P1-3 of the kit"
 */
public record Origin(Phrase what) {}
