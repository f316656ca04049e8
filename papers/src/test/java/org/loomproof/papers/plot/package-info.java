/** Plots looked at as numbers: what is drawn, where, and that nothing lies over anything else. */
@NullMarked
package org.loomproof.papers.plot;

import org.jspecify.annotations.NullMarked;
