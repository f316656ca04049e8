/**
 * From a network and a setting to an operating point, in four steps kept apart: lay out the network once ({@code Layout}),
 * factor for a pattern of conductances ({@code Factorisation}), bend the curved parts until they agree ({@code
 * NewtonIteration}), move contacts until nothing moves ({@code ContactSettling}). Mutation lives in the work arrays here and
 * dies here.
 */
@NullMarked
package org.loomproof.network.solve;

import org.jspecify.annotations.NullMarked;
