@NullMarked
package org.loomproof.book.store;

import org.jspecify.annotations.NullMarked;
