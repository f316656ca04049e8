package org.loomproof.intake.field;

/** How a field came to be read, surest first; {@code evidence.csv} says what each weighs. */
public enum Evidence {
    /** A person has said so. */
    BY_HAND,
    /** A known phrase, in a column that is there for it. */
    IN_ITS_COLUMN,
    /** In a column that is there for it, in words that nobody knows: it may hold more than it should. */
    OWN_WORDS,
    /** A known phrase among others. */
    AMONG_OTHERS,
    /** A known phrase, where the same words name another as well. */
    AMONG_SEVERAL,
    /** Put together from known words. */
    COMPOUND,
    /** Taken over from the row above or a heading. */
    TAKEN_OVER,
    /** A word that is a letter off. */
    MISSPELT,
    /** A word that only sounds like one: never sure. */
    BY_EAR,
    /** Words nobody knows stand beside it and may change it. */
    BESIDE_UNKNOWN,
    /** Half of what usually names it. */
    HALF_NAMED,
    /** It may mean two things. */
    AMBIGUOUS
}
