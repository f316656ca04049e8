package org.loomproof.workshop.meter.shock;

/** The normal distribution. */
final class Normal {

    private Normal() {}

    /**
     * The share of a standard normal variable below z, to 1e-7: Abramowitz and Stegun, Handbook of Mathematical Functions,
     * 26.2.17 (from memory; checked against tabled values).
     */
    static double upTo(double z) {
        double t = 1 / (1 + 0.2316419 * Math.abs(z));
        double tail = Math.exp(-z * z / 2)
                / Math.sqrt(2 * Math.PI)
                * t
                * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z >= 0 ? 1 - tail : tail;
    }
}
