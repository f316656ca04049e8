/**
 * Conductors: what a metre resists, which sizes are bought, what they may be fused at, and how much they may drop.
 */
@NullMarked
package org.loomproof.workshop.trade.wire;

import org.jspecify.annotations.NullMarked;
