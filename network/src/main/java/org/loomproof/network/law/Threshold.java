package org.loomproof.network.law;

/**
 * A voltage with hysteresis that moves something: it is passed once the drive reaches {@code riseVolts} and not passed once
 * the drive falls to {@code fallVolts}; in between it stays.
 *
 * @param plus pin number
 * @param minus pin number
 * @param riseVolts drive at which it is passed, not below {@code fallVolts}
 * @param fallVolts drive at which it ceases to be
 * @param eitherPolarity whether only the size of the voltage counts (a plain coil)
 */
public record Threshold(int plus, int minus, double riseVolts, double fallVolts, boolean eitherPolarity) {}
