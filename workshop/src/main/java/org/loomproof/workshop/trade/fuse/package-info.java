/**
 * Blade fuses: ratings, cold resistances, and the share of its rating a fuse may carry for long.
 */
@NullMarked
package org.loomproof.workshop.trade.fuse;

import org.jspecify.annotations.NullMarked;
