/**
 * What one piece of text says of one field: colour, size, how the wire switches, where it is, and marks of doubt. Words are data files beside the code; nothing here knows rows or tables.
 */
@NullMarked
package org.loomproof.intake.field;

import org.jspecify.annotations.NullMarked;
