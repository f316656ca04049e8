/**
 * Resistors the shop can buy: preferred values and what they may be off.
 */
@NullMarked
package org.loomproof.workshop.trade.resistor;

import org.jspecify.annotations.NullMarked;
