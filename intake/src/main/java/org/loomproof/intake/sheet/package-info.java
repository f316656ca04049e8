/**
 * From entries to a sheet file, and to a table that reads back: what may go on the sheet, what stays behind with the question
 * that would bring it there, and how a second source is merged. Knows nothing of how a text was read.
 */
@NullMarked
package org.loomproof.intake.sheet;

import org.jspecify.annotations.NullMarked;
