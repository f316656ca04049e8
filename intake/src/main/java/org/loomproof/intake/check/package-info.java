/**
 * From records to entries of a sheet: fields put together, what contradicts or repeats itself, what is missing, and what was not understood. Nothing is dropped without being told.
 */
@NullMarked
package org.loomproof.intake.check;

import org.jspecify.annotations.NullMarked;
