/** Putting papers where they belong: all of them or none, and never over somebody else's files. */
@NullMarked
package org.loomproof.papers.folder;

import org.jspecify.annotations.NullMarked;
