/**
 * Has the prover judge the candidates of the planner and picks one. Neither of those two knows the other.
 */
@NullMarked
package org.loomproof.workshop.weigh;

import org.jspecify.annotations.NullMarked;
