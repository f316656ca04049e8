/**
 * How every room tells a reader what is wrong with what was given: all of it at once, each with its place.
 *
 * <p>Knows words, and nothing of the job.
 */
@NullMarked
package org.loomproof.workshop.problem;

import org.jspecify.annotations.NullMarked;
