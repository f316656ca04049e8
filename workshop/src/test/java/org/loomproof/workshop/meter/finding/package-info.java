/** Findings about wires. */
@NullMarked
package org.loomproof.workshop.meter.finding;

import org.jspecify.annotations.NullMarked;
