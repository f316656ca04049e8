package org.loomproof.workshop.problem;

import org.loomproof.workshop.words.Phrase;

/**
 * One thing that is wrong with what was given.
 *
 * @param at where
 * @param kind what sort of trouble
 * @param found what stands there, shortened to a line
 * @param wanted what would be accepted
 * @param hint what to do, or the nearest accepted word
 */
public record Problem(Place at, ProblemKind kind, String found, Phrase wanted, Phrase hint) {}
