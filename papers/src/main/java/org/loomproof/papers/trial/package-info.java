/** The test order by which the finished car is passed, and the record of how it left the bay. */
@NullMarked
package org.loomproof.papers.trial;

import org.jspecify.annotations.NullMarked;
