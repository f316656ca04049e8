/** Counts and sums of the goods of a job, against sums worked by hand. */
@NullMarked
package org.loomproof.workshop.goods;

import org.jspecify.annotations.NullMarked;
