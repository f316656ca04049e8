/**
 * What changes from one plan to the next: leads, articles, minutes, price, and what is to be undone in the car. Data only.
 */
@NullMarked
package org.loomproof.workshop.goods.change;

import org.jspecify.annotations.NullMarked;
