/**
 * Timed runs of real examples. May know every module; no module knows it.
 */
@NullMarked
package org.loomproof.benchmarks;

import org.jspecify.annotations.NullMarked;
