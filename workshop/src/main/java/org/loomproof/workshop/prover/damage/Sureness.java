package org.loomproof.workshop.prover.damage;

/**
 * How surely a sign is there, and how surely it is not. Each is zero at the limit from which on it is sure, more beyond and less
 * before it, in whatever unit the sign is read in; both are negative where nobody can say.
 *
 * @param there by how much it is beyond the limit from which on it is surely there
 * @param absent by how much it is beyond the limit from which on it is surely not there
 */
record Sureness(double there, double absent) {

    /** Nobody can say, and nothing tells how far from it. */
    static final Sureness NONE = new Sureness(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    /** Of something that is plainly there from one value on and plainly not up to a lesser one. */
    static Sureness between(double value, double absentUpTo, double thereFrom) {
        return new Sureness(value - thereFrom, absentUpTo - value);
    }

    /** What is sure whichever of the two it is. */
    Sureness or(Sureness other) {
        return new Sureness(Math.min(there, other.there), Math.min(absent, other.absent));
    }
}
