/** A placed drawing as SVG. */
@NullMarked
package org.loomproof.papers.svg;

import org.jspecify.annotations.NullMarked;
