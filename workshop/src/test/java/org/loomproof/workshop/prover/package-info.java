@NullMarked
package org.loomproof.workshop.prover;

import org.jspecify.annotations.NullMarked;
