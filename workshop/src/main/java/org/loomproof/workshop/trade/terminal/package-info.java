/**
 * Terminal numbers of DIN 72552 and what the five terminals of a cube relay do.
 */
@NullMarked
package org.loomproof.workshop.trade.terminal;

import org.jspecify.annotations.NullMarked;
