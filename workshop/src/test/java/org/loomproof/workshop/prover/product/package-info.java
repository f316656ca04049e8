@NullMarked
package org.loomproof.workshop.prover.product;

import org.jspecify.annotations.NullMarked;
