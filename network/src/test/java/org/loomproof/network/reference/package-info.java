/** A general-purpose circuit simulator as numerical reference, run from tests only. Nothing of it is in the library. */
@NullMarked
package org.loomproof.network.reference;

import org.jspecify.annotations.NullMarked;
