/** What rushes in when something is switched on, and what bears it. Knows no plan and no network. */
@NullMarked
package org.loomproof.workshop.trade.inrush;

import org.jspecify.annotations.NullMarked;
