package org.loomproof.intake.layout;

/** What a column, or a line of a form, holds. */
public enum ColumnKind {
    ROLE,
    COLOUR,
    POLARITY,
    PLACE,
    CONNECTOR,
    CAVITY,
    SIZE,
    NOTE,
    /** Anything: a line, a sentence, or a column that nobody could tell. */
    FREE
}
