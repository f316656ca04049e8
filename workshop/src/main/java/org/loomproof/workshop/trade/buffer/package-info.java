/**
 * Ready-made transistor buffers the shop can buy: what they ask of a wire and what they carry.
 */
@NullMarked
package org.loomproof.workshop.trade.buffer;

import org.jspecify.annotations.NullMarked;
