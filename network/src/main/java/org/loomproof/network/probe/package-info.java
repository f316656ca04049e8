/** A meter's questions: volts between two points, amps through a part, ohms between two points with the supply off. */
@NullMarked
package org.loomproof.network.probe;

import org.jspecify.annotations.NullMarked;
