/**
 * The supply points that every proof is run at.
 */
@NullMarked
package org.loomproof.workshop.trade.supply;

import org.jspecify.annotations.NullMarked;
