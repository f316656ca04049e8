/**
 * What a person puts right: the source beside what was understood of it, one correction as a function from entry to entry, and what a shop
 * remembers of its corrections, as data. Suggestions are shown, never taken without being asked.
 */
@NullMarked
package org.loomproof.intake.correct;

import org.jspecify.annotations.NullMarked;
