/**
 * Insulation colours in the letters of IEC 60757.
 */
@NullMarked
package org.loomproof.workshop.trade.colour;

import org.jspecify.annotations.NullMarked;
