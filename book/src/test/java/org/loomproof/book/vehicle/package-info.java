@NullMarked
package org.loomproof.book.vehicle;

import org.jspecify.annotations.NullMarked;
