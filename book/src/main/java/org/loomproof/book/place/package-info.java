/** Where a book may lie, and why it was not opened there. */
@NullMarked
package org.loomproof.book.place;

import org.jspecify.annotations.NullMarked;
