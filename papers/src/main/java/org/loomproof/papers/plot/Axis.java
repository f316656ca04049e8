package org.loomproof.papers.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale between two values, with ticks at round numbers: 1, 2 or 5 times a power of ten.
 *
 * @param low the value at the scale's beginning, not above {@code high}
 */
record Axis(double low, double high, double step) {
    /** A value so little beyond a tick, as a part of a step, needs no further one. */
    private static final double HARDLY = 1e-3;

    /** A scale for values from {@code least} to {@code greatest} that ends on ticks. */
    static Axis onTicks(double least, double greatest, int about) {
        double span = greatest > least ? greatest - least : Math.max(1, Math.abs(least));
        double step = step(span, about);
        return new Axis(
                Math.floor(least / step + HARDLY) * step, Math.ceil((least + span) / step - HARDLY) * step, step);
    }

    /** A scale that ends where the values end. */
    static Axis exact(double low, double high, int about) {
        return new Axis(low, high, step(high - low, about));
    }

    private static double step(double span, int about) {
        double raw = span / about;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double share = raw / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }

    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        long first = (long) Math.ceil(low / step - 1e-9);
        long last = (long) Math.floor(high / step + 1e-9);
        for (long k = first; k <= last; k++) {
            ticks.add(k * step);
        }
        return ticks;
    }

    /** Decimals that a tick needs. */
    int decimals() {
        return (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    }

    /** Where a value lies, 0 at the low end and 1 at the high one. */
    double share(double value) {
        return (value - low) / (high - low);
    }
}
