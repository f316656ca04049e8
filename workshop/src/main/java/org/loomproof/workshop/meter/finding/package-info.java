/**
 * What a file of readings says of each of its wires, with reasons and with what to do next.
 */
@NullMarked
package org.loomproof.workshop.meter.finding;

import org.jspecify.annotations.NullMarked;
