/** The lines of a shop's own comma-separated files, before anybody knows what they mean. */
@NullMarked
package org.loomproof.workshop.goods.list;

import org.jspecify.annotations.NullMarked;
