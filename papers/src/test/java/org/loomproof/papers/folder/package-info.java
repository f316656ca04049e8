/** Writing all or nothing, tried on real folders. */
@NullMarked
package org.loomproof.papers.folder;

import org.jspecify.annotations.NullMarked;
