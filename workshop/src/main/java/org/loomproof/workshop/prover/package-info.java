/**
 * Judges a plan: solves stock and fitted vehicle in every situation and says of each claim that it holds, is broken, or is open. Knows the brief and the plan, and no rule of the planner.
 */
@NullMarked
package org.loomproof.workshop.prover;

import org.jspecify.annotations.NullMarked;
