package org.loomproof.network.part;

/** Temperatures above absolute zero. */
final class Kelvin {
    private static final double OF_ICE = 273.15;
    private static final double REFERENCE_CELSIUS = 20;

    private Kelvin() {}

    /**
     * How many times the absolute temperature of 20 °C this one is.
     *
     * @throws IllegalArgumentException at absolute zero and below
     */
    static double shareOfReference(double celsius) {
        double share = (celsius + OF_ICE) / (REFERENCE_CELSIUS + OF_ICE);
        if (!(share > 0) || Double.isInfinite(share)) {
            throw new IllegalArgumentException("a temperature above absolute zero is needed, was " + celsius + " °C");
        }
        return share;
    }
}
