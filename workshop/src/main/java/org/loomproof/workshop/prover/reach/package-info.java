/**
 * The controller as a state machine with timers, walked breadth first: which outputs may be on together, and the fewest steps that
 * lead there. Knows the kit alone; what the network makes of it is for others.
 */
@NullMarked
package org.loomproof.workshop.prover.reach;

import org.jspecify.annotations.NullMarked;
