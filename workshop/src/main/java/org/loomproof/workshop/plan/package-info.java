/**
 * The shared noun of planner and prover: what happens to every lead, with which parts and wires, and why. Data only.
 */
@NullMarked
package org.loomproof.workshop.plan;

import org.jspecify.annotations.NullMarked;
