/**
 * Reads how current runs along a factory circuit, from the steps of a sheet or of a template: the same words, the same reader.
 */
@NullMarked
package org.loomproof.workshop.brief.path;

import org.jspecify.annotations.NullMarked;
