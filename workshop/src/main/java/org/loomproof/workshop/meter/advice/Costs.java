package org.loomproof.workshop.meter.advice;

/**
 * What an error costs, in further measurements: the price of certainty. To act is worth it as soon as the chance of being
 * wrong times its cost is below one more measurement. Common practice, no published source; both may be set.
 *
 * @param wrongTap of joining a lead to the wrong wire, found in the tests before the panels go on
 * @param wrongCut of cutting the wrong wire
 */
public record Costs(double wrongTap, double wrongCut) {

    /** A wrong tap costs ten measurements, a wrong cut two hundred. */
    public static final Costs USUAL = new Costs(10, 200);

    public Costs {
        if (!(wrongTap > 1) || !(wrongCut >= wrongTap) || Double.isInfinite(wrongCut)) {
            throw new IllegalArgumentException(
                    "a wrong cut costs no less than a wrong tap, and that more than a measurement: " + wrongTap + ", "
                            + wrongCut);
        }
    }

    /** The probability from which a wire may be joined. */
    public double connectAt() {
        return 1 - 1 / wrongTap;
    }

    /** The probability from which a wire may be cut, evidence allowing. */
    public double cutAt() {
        return 1 - 1 / wrongCut;
    }
}
