/**
 * The tests that a technician can do at the finished car, which of them are needed, and in which order. Knows what can be
 * operated and seen, and nothing of how a fault is solved.
 */
@NullMarked
package org.loomproof.workshop.prover.testorder;

import org.jspecify.annotations.NullMarked;
