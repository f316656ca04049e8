/**
 * Every situation that matters, in a fixed order, and the steps by which a person reaches one.
 */
@NullMarked
package org.loomproof.workshop.prover.state;

import org.jspecify.annotations.NullMarked;
