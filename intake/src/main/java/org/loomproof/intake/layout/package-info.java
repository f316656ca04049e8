/**
 * How a text is laid out, without being told: tables of every sort, headings, lines, paragraphs and prose become records of cells. Knows fields and roles only as far as it needs them to tell columns apart.
 */
@NullMarked
package org.loomproof.intake.layout;

import org.jspecify.annotations.NullMarked;
