/**
 * How bench knowledge is kept: text tables with a header that says where the figures come from. It knows no trade.
 */
@NullMarked
package org.loomproof.workshop.trade.table;

import org.jspecify.annotations.NullMarked;
