/**
 * What a job costs: the pick list and the work, at the shop's own prices. Money is exact decimal; a price that is not on the
 * list is said to be missing and never guessed.
 */
@NullMarked
package org.loomproof.workshop.goods.price;

import org.jspecify.annotations.NullMarked;
