/** Escaping. */
@NullMarked
package org.loomproof.papers.markup;

import org.jspecify.annotations.NullMarked;
