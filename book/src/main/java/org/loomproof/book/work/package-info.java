/** Long work in the background, as those who ask for it and those who do it see it. How it is kept: {@code book.store}. */
@NullMarked
package org.loomproof.book.work;

import org.jspecify.annotations.NullMarked;
