/** What the tests of every module share: how much of a long test to run, and what {@code ./check} repeats of it. */
@NullMarked
package org.loomproof.testing;

import org.jspecify.annotations.NullMarked;
