package org.loomproof.intake.check;

/** The fields of an entry. */
public enum Field {
    ROLE,
    COLOUR,
    SIZE,
    POLARITY,
    PLACE
}
