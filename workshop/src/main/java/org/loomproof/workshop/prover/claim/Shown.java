package org.loomproof.workshop.prover.claim;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;

/** Volts and amps as a meter in the car would show them: what is less than it can show is nothing. */
public final class Shown {

    private static final double LEAST_VOLTS = 1e-4;
    private static final double LEAST_AMPS = 1e-6;

    private Shown() {}

    /** Volts; under 0.1 mV none. */
    public static Volts volts(double value) {
        return new Volts(Math.abs(value) < LEAST_VOLTS ? 0 : value);
    }

    /** Amps; under 1 µA none. */
    public static Amps amps(double value) {
        return new Amps(Math.abs(value) < LEAST_AMPS ? 0 : value);
    }
}
