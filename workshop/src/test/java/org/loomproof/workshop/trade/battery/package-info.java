@NullMarked
package org.loomproof.workshop.trade.battery;

import org.jspecify.annotations.NullMarked;
