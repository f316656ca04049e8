@NullMarked
package org.loomproof.workshop.prover.testorder;

import org.jspecify.annotations.NullMarked;
