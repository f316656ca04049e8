/**
 * Bytes to lines of text, each character with where it stood in the source. Knows nothing of vehicles.
 */
@NullMarked
package org.loomproof.intake.decode;

import org.jspecify.annotations.NullMarked;
