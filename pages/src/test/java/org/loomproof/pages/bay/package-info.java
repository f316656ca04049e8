/** Tests of the bench and the bay. */
@NullMarked
package org.loomproof.pages.bay;

import org.jspecify.annotations.NullMarked;
