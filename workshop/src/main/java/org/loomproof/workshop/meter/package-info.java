/**
 * The meter: what it must show on each wire, and what a wire is by what it showed.
 *
 * <p>Knows sheets, wiring and the engine. Never asks the planner or the prover.
 */
@NullMarked
package org.loomproof.workshop.meter;

import org.jspecify.annotations.NullMarked;
