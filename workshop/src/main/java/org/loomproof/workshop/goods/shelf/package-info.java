/**
 * What a job takes from the shelf and out of the box, exactly counted, and the tools to have at hand. Knows no prices.
 */
@NullMarked
package org.loomproof.workshop.goods.shelf;

import org.jspecify.annotations.NullMarked;
