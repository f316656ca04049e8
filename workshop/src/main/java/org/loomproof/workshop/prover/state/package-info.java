/**
 * Every situation that matters, in a fixed order.
 */
@NullMarked
package org.loomproof.workshop.prover.state;

import org.jspecify.annotations.NullMarked;
