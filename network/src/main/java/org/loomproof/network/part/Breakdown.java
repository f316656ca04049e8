package org.loomproof.network.part;

/**
 * How a zener or a transient suppressor breaks down: v = volts + ohms (i - atAmps) above the test current, bending down to
 * nothing below it.
 *
 * @param volts reverse voltage at the test current, at least {@link #LEAST_VOLTS}
 * @param atAmps test current, above zero
 * @param ohms slope resistance above it, above zero
 */
public record Breakdown(double volts, double atAmps, double ohms) {
    /** Below this a real one breaks down too softly for this curve. */
    public static final double LEAST_VOLTS = 2;

    public Breakdown {
        if (!(volts >= LEAST_VOLTS) || !(atAmps > 0) || !(ohms > 0)) {
            throw new IllegalArgumentException(
                    "a breakdown needs at least %s V, a test current and a slope above zero, was %s, %s, %s"
                            .formatted(LEAST_VOLTS, volts, atAmps, ohms));
        }
        if (Double.isInfinite(volts) || Double.isInfinite(atAmps) || Double.isInfinite(ohms)) {
            throw new IllegalArgumentException("a breakdown's figures must be finite");
        }
        if (ohms * atAmps >= volts) {
            throw new IllegalArgumentException("a slope of " + ohms + " ohms leaves nothing of " + volts + " V");
        }
    }
}
