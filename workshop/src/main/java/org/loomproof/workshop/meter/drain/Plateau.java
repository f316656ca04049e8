package org.loomproof.workshop.meter.drain;

/**
 * A time in which the current stood.
 *
 * @param fromMinutes its first sample, since locking
 * @param toMinutes its last
 * @param amps its geometric mean
 * @param samples how many it has, at least one
 */
public record Plateau(double fromMinutes, double toMinutes, double amps, int samples) {}
