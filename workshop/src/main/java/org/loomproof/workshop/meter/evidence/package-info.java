/**
 * How well what was read fits each thing a wire may be, and what follows from it. Exact over the drawn cars: nothing is
 * sampled, nothing is left out.
 */
@NullMarked
package org.loomproof.workshop.meter.evidence;

import org.jspecify.annotations.NullMarked;
