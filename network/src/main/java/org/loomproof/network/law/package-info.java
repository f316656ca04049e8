/**
 * What each part adds to the equations: terms between its pins, the condition under which each counts, and the threshold
 * that moves its contacts. One file a part kind and one a curve; knows nothing of how the equations are solved.
 */
@NullMarked
package org.loomproof.network.law;

import org.jspecify.annotations.NullMarked;
