/** The number of a vehicle. It knows nothing of what is kept about it. */
@NullMarked
package org.loomproof.book.vehicle;

import org.jspecify.annotations.NullMarked;
