package org.loomproof.workshop.meter.comeback;

/**
 * What a meter showed at a finished car.
 *
 * @param look where and when
 * @param volts against the body
 * @param batteryVolts between the battery's posts at that moment
 */
public record Taken(Look look, double volts, double batteryVolts) {}
