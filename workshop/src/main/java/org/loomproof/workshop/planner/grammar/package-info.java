/**
 * The stated grammar of couplings: what may stand between the end that decides and the end that is worked, how all of it is
 * enumerated within a bound, and which words are left out before anything is proven, each for a reason that can be counted.
 * Knows currents and poles, and no role, name or colour.
 */
@NullMarked
package org.loomproof.workshop.planner.grammar;

import org.jspecify.annotations.NullMarked;
