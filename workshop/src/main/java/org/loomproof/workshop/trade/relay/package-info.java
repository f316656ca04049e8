/**
 * Relays the shop can buy: coil, pull-in, drop-out and what each contact may carry.
 */
@NullMarked
package org.loomproof.workshop.trade.relay;

import org.jspecify.annotations.NullMarked;
