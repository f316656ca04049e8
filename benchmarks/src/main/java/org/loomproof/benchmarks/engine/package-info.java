/** The engine timed on looms of its own making, and the same looms written out for a general-purpose simulator. */
@NullMarked
package org.loomproof.benchmarks.engine;

import org.jspecify.annotations.NullMarked;
