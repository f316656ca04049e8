/**
 * Messy text to a sheet or a kit. It may know the workshop, whose readers have the last word on what it makes.
 */
@NullMarked
package org.loomproof.intake;

import org.jspecify.annotations.NullMarked;
