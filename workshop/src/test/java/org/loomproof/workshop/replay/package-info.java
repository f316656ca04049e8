/**
 * Witnesses carried out in time: a controller with clocks, written from what a kit says and from nothing of the prover's, in the
 * network of the whole car.
 */
@NullMarked
package org.loomproof.workshop.replay;

import org.jspecify.annotations.NullMarked;
