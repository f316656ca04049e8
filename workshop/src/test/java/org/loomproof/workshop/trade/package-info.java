/** The data files against the page of sources. */
@NullMarked
package org.loomproof.workshop.trade;

import org.jspecify.annotations.NullMarked;
