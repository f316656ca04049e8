/**
 * Bench knowledge: ratings, curves, sizes, colours and role templates, as data files with readers.
 */
@NullMarked
package org.loomproof.workshop.trade;

import org.jspecify.annotations.NullMarked;
