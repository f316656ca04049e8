package org.loomproof.workshop.brief;

/** How sure we are of a statement, surest first. */
public enum Certainty {
    /** A meter has shown it on this car. */
    VERIFIED,
    /** Somebody who should know has said so. */
    STATED,
    /** Somebody thinks so. */
    GUESSED,
    /** Nobody has said anything; the trade's usual range stands in. */
    ASSUMED
}
