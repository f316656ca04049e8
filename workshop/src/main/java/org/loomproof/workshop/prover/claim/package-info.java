/**
 * The claims, one file each: what the fitted vehicle must satisfy, in trade words.
 */
@NullMarked
package org.loomproof.workshop.prover.claim;

import org.jspecify.annotations.NullMarked;
