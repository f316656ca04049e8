package org.loomproof.workshop.meter.comeback;

import org.loomproof.workshop.wiring.Situation;

/**
 * One thing to measure.
 *
 * @param at where
 * @param when in which situation of car and controller
 */
public record Look(Probe at, Situation when) {}
