/** The commands that open the job book in browsers, back it up and restore it. */
@NullMarked
package org.loomproof.pages;

import org.jspecify.annotations.NullMarked;
