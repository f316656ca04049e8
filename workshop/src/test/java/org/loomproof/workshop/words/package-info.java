/** Tests of the words. */
@NullMarked
package org.loomproof.workshop.words;

import org.jspecify.annotations.NullMarked;
