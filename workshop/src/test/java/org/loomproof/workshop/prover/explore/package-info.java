/** What the walk through situations promises. */
@NullMarked
package org.loomproof.workshop.prover.explore;

import org.jspecify.annotations.NullMarked;
