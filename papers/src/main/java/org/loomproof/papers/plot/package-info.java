/** Plots of a run in time: volts and amps against time, contacts below. Knows the engine's traces and no vehicle. */
@NullMarked
package org.loomproof.papers.plot;

import org.jspecify.annotations.NullMarked;
