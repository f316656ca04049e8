/**
 * From the text of a file to its entries, and from entries to values: every problem collected with its place, nothing thrown
 * for what a person wrote. Knows how things are written, and not what a sheet, a kit or an order is.
 */
@NullMarked
package org.loomproof.workshop.brief.text;

import org.jspecify.annotations.NullMarked;
