@NullMarked
package org.loomproof.workshop.prover.claim;

import org.jspecify.annotations.NullMarked;
