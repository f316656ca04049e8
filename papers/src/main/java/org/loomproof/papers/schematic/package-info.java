/** From a brief and a plan to the drawing that a technician follows with a finger. */
@NullMarked
package org.loomproof.papers.schematic;

import org.jspecify.annotations.NullMarked;
