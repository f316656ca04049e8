/** Volts, amps, ohms and the rest: one small value type each, so that a length is never taken for a current. */
@NullMarked
package org.loomproof.workshop.quantity;

import org.jspecify.annotations.NullMarked;
