/**
 * The stated grammar of relays in cut wires: what may stand between what works and what switches, so that the wire is whole
 * while the outputs rest; how all of it is enumerated within a bound, and what is left out before anything is proven. Knows
 * poles, and no role, name or colour.
 */
@NullMarked
package org.loomproof.workshop.planner.cut;

import org.jspecify.annotations.NullMarked;
