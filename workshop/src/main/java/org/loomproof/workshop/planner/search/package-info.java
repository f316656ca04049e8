/**
 * Puts the answers of all rules together into whole plans: order, bound, numbers, sizes.
 */
@NullMarked
package org.loomproof.workshop.planner.search;

import org.jspecify.annotations.NullMarked;
