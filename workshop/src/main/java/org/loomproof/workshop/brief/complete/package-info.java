/**
 * Gives a circuit whose sheet does not say how current runs the path that is usual for its role, each figure a range marked
 * assumed.
 */
@NullMarked
package org.loomproof.workshop.brief.complete;

import org.jspecify.annotations.NullMarked;
