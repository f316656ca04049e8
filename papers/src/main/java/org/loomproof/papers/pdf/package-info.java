/** Pages as PDF, ready for a printer: tagged, with bookmarks, with its fonts inside. The same page gives the same bytes. */
@NullMarked
package org.loomproof.papers.pdf;

import org.jspecify.annotations.NullMarked;
