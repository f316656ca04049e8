/**
 * Solves stock and fitted vehicle side by side in every situation that can matter, and keeps for each case the worst that was
 * found. Knows nothing of what a case means.
 */
@NullMarked
package org.loomproof.workshop.prover.explore;

import org.jspecify.annotations.NullMarked;
