/**
 * The worst a network may do within tolerances, supply and temperature: many operating points, and a word on whether their
 * extremes are proven or only found. Knows nothing of how a point is solved.
 */
@NullMarked
package org.loomproof.network.corner;

import org.jspecify.annotations.NullMarked;
