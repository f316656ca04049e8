/** Runs in time against closed forms, published examples, a numerical reference and the laws of physics. */
@NullMarked
package org.loomproof.network.time;

import org.jspecify.annotations.NullMarked;
