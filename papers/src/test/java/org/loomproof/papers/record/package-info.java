/** Tests of the record that the shop keeps. */
@NullMarked
package org.loomproof.papers.record;

import org.jspecify.annotations.NullMarked;
