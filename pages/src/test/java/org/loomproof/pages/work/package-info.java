/** Tests of the work log. */
@NullMarked
package org.loomproof.pages.work;

import org.jspecify.annotations.NullMarked;
