/**
 * From a sheet in memory back to its text, so that a completed sheet can be kept, read and changed by hand.
 */
@NullMarked
package org.loomproof.workshop.brief.write;

import org.jspecify.annotations.NullMarked;
