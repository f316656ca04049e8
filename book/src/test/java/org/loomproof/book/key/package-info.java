@NullMarked
package org.loomproof.book.key;

import org.jspecify.annotations.NullMarked;
