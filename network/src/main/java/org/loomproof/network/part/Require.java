package org.loomproof.network.part;

/** Refuses values no real part can have. Every refusal is the caller's fault and throws at once. */
final class Require {
    private Require() {}

    static void named(String name, String what) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a " + what + " needs a name");
        }
    }

    /** Finite and above zero. */
    static void positive(double value, String what, PartId id) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(id + ": " + what + " must be above zero and finite, was " + value);
        }
    }

    /** Finite and not below zero. */
    static void notNegative(double value, String what, PartId id) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(id + ": " + what + " must be finite and not negative, was " + value);
        }
    }

    static void finite(double value, String what, PartId id) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(id + ": " + what + " must be finite, was " + value);
        }
    }

    static void that(boolean holds, String what, PartId id) {
        if (!holds) {
            throw new IllegalArgumentException(id + ": " + what);
        }
    }
}
