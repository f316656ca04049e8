/** Problems as they are told. */
@NullMarked
package org.loomproof.workshop.problem;

import org.jspecify.annotations.NullMarked;
