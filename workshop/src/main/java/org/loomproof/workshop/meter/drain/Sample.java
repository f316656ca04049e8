package org.loomproof.workshop.meter.drain;

/**
 * The battery's current at a moment.
 *
 * @param minutes since everything was closed and locked, 0 or more
 * @param amps drawn, 0 or more
 * @param errorAmps standard deviation of the meter's error, above 0
 */
public record Sample(double minutes, double amps, double errorAmps) {

    public Sample {
        if (!(minutes >= 0) || !(amps >= 0) || !(errorAmps > 0)) {
            throw new IllegalArgumentException("no such sample: " + minutes + " min, " + amps + " A, ±" + errorAmps);
        }
    }
}
