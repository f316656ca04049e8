@NullMarked
package org.loomproof.book;

import org.jspecify.annotations.NullMarked;
