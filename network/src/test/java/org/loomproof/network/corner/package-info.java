/** Worst cases against sums by hand and against looking everywhere. */
@NullMarked
package org.loomproof.network.corner;

import org.jspecify.annotations.NullMarked;
