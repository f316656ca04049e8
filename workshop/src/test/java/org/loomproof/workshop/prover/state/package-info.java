@NullMarked
package org.loomproof.workshop.prover.state;

import org.jspecify.annotations.NullMarked;
