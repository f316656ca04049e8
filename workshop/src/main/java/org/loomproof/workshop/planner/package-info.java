/**
 * From a brief to ordered candidate plans: every lead decided with a reason, wishes turned down with a reason. May not know
 * the network, the wiring or the prover: what the planner believes is judged elsewhere.
 */
@NullMarked
package org.loomproof.workshop.planner;

import org.jspecify.annotations.NullMarked;
