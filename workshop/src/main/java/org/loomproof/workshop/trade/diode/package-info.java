/**
 * Rectifier diodes the shop can buy, with their ratings.
 */
@NullMarked
package org.loomproof.workshop.trade.diode;

import org.jspecify.annotations.NullMarked;
