package org.loomproof.workshop.prover.verdict;

import org.loomproof.workshop.words.Phrase;

/**
 * One volt or amp to be seen in the car.
 *
 * @param at where to put the meter, in words
 * @param reads what it shows, with its unit
 */
public record Observation(Phrase at, String reads) {}
