/** Readings as technicians write them down. */
@NullMarked
package org.loomproof.workshop.meter.reading;

import org.jspecify.annotations.NullMarked;
