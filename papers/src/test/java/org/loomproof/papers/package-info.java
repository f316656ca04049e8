/** The papers of small jobs, told in the words of the bench. */
@NullMarked
package org.loomproof.papers;

import org.jspecify.annotations.NullMarked;
