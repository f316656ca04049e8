/**
 * What the customer wants and what the shop has decided.
 */
@NullMarked
package org.loomproof.workshop.brief.order;

import org.jspecify.annotations.NullMarked;
