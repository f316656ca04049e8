/** What the walk of the controller's states and timers promises. */
@NullMarked
package org.loomproof.workshop.prover.reach;

import org.jspecify.annotations.NullMarked;
