/**
 * The order of the work in the bay: ground first, then panel by panel, then what is mounted, then what is cut, and the
 * controller's fuse last of all. Common practice, no published source.
 */
@NullMarked
package org.loomproof.workshop.goods.bay;

import org.jspecify.annotations.NullMarked;
