/**
 * What a thief may try in an armed car, as damages of the fitted vehicle, and what comes of each. It knows the claims, not the
 * faults of a plan.
 */
@NullMarked
package org.loomproof.workshop.prover.threat;

import org.jspecify.annotations.NullMarked;
