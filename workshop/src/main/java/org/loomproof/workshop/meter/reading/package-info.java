/**
 * What somebody measured: a file of readings, line by line, and every problem in it. Knows no role and no network.
 */
@NullMarked
package org.loomproof.workshop.meter.reading;

import org.jspecify.annotations.NullMarked;
