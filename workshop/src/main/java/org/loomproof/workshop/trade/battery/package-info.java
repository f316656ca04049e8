/**
 * Starter batteries: power in the cold and what may be taken while the car stands.
 */
@NullMarked
package org.loomproof.workshop.trade.battery;

import org.jspecify.annotations.NullMarked;
