/** Rules of size against published tables and worked examples. */
@NullMarked
package org.loomproof.workshop.sizing;

import org.jspecify.annotations.NullMarked;
