/** Words and marks. */
@NullMarked
package org.loomproof.papers.page;

import org.jspecify.annotations.NullMarked;
