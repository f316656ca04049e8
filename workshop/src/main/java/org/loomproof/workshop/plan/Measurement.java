package org.loomproof.workshop.plan;

import org.loomproof.workshop.words.Phrase;

/**
 * A measurement that settles something, named so that it can be asked for.
 *
 * @param name short and stable, such as {@code levels-of starter}
 * @param what what to measure, and in which positions
 */
public record Measurement(String name, Phrase what) {}
