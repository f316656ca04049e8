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
    /** Short words that nothing else explains, behind a column of colours: mostly where the wire is, in words of the writer's own. */
    PERHAPS_PLACE,
    NOTE,
    /** Anything: a line, a sentence, or a column that nobody could tell. */
    FREE,
    /** Where all circuits of a list are, said once for them all. */
    PLACE_OF_ALL
}
