package org.loomproof.workshop.meter.evidence;

/** The normal distribution. */
public final class Bell {

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    private Bell() {}

    /** Density at a value, per unit. */
    public static double density(double value, double mean, double spread) {
        double z = (value - mean) / spread;
        return Math.exp(-0.5 * z * z) / (spread * ROOT_TWO_PI);
    }

    /**
     * Share below a value. After Abramowitz and Stegun, formula 7.1.26, whose error is below 1.5e-7 (from memory).
     */
    public static double below(double value, double mean, double spread) {
        double x = (value - mean) / (spread * Math.sqrt(2));
        double t = 1 / (1 + 0.3275911 * Math.abs(x));
        double poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
        double erf = 1 - poly * Math.exp(-x * x);
        return 0.5 * (1 + (x < 0 ? -erf : erf));
    }
}
