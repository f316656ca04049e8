/** A drawing before it has a format: symbols, conductors and lettering on a sheet, and the layout that places them. Knows nothing of vehicles. */
@NullMarked
package org.loomproof.papers.drawing;

import org.jspecify.annotations.NullMarked;
