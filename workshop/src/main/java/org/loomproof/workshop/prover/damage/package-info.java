/**
 * Walks the fitted vehicle with one thing wrong, wherever that can change anything, and tells which cases break and which
 * signs a person would see. Knows nothing of what a case or a test means.
 */
@NullMarked
package org.loomproof.workshop.prover.damage;

import org.jspecify.annotations.NullMarked;
