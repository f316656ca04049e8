/** Trees of elements and text, and the one place that escapes them into bytes. Knows nothing of papers. */
@NullMarked
package org.loomproof.papers.markup;

import org.jspecify.annotations.NullMarked;
