/**
 * What vehicle and controller come to together: the controller as a state machine read from the kit, stepped by people and by
 * time, searched breadth first until nothing new is reached.
 */
@NullMarked
package org.loomproof.workshop.prover.product;

import org.jspecify.annotations.NullMarked;
