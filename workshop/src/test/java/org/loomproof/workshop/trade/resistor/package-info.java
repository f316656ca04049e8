@NullMarked
package org.loomproof.workshop.trade.resistor;

import org.jspecify.annotations.NullMarked;
