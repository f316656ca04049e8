/**
 * What a thief may try from inside the car.
 */
@NullMarked
package org.loomproof.workshop.trade.threat;

import org.jspecify.annotations.NullMarked;
