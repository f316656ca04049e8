/**
 * The use cases of reading notes as they come: wiring notes to a sheet, a list of leads to a kit. Reads, calls the intake's rooms
 * in order, writes the file that is asked for. Decides nothing itself.
 */
@NullMarked
package org.loomproof.shop.notes;

import org.jspecify.annotations.NullMarked;
