package org.loomproof.workshop.quantity;

/**
 * American wire gauge: gauge 36 is 0.005 inch across, gauge 0000 is 0.46 inch, and each of the 39 steps between has the same
 * ratio (the law of ASTM B258; values against the published table in {@code docs/sources.md}).
 */
public final class WireGauge {

    private static final double GAUGE_36_MILLIMETRES = 0.127;
    private static final double RATIO_OF_39_STEPS = 92;

    private WireGauge() {}

    /**
     * The cross-section of a solid round conductor.
     *
     * @param gauge the number; 0 for 1/0, −1 for 2/0 and so on down to −3 for 4/0
     */
    public static SquareMillimetres area(int gauge) {
        double diameter = GAUGE_36_MILLIMETRES * Math.pow(RATIO_OF_39_STEPS, (36 - gauge) / 39.0);
        return new SquareMillimetres(Math.PI / 4 * diameter * diameter);
    }
}
