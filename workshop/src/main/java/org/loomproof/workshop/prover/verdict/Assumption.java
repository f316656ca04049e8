package org.loomproof.workshop.prover.verdict;

import org.loomproof.workshop.plan.Measurement;

/**
 * A range that nobody stated, on which a verdict rests.
 *
 * @param figure the path of the figure it stands in for
 * @param low the least it was taken to be, with its unit
 * @param high the most, with its unit
 * @param settledBy the reading that would replace it
 */
public record Assumption(String figure, String low, String high, Measurement settledBy) {}
