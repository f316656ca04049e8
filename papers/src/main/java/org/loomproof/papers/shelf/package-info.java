/** The pick list as a page and as a table. */
@NullMarked
package org.loomproof.papers.shelf;

import org.jspecify.annotations.NullMarked;
