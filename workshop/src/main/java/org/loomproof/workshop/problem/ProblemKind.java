package org.loomproof.workshop.problem;

import java.util.Locale;

/** What can be wrong with an entry; each kind has an entry of its own in {@code docs/problems.md}. */
public enum ProblemKind {
    FILE_NOT_FOUND,
    FILE_TOO_LARGE,
    NOT_UTF8,
    NOT_TEXT,
    NOT_YAML,
    TOO_DEEP,
    TOO_MANY_ALIASES,
    WRONG_FORMAT,
    WRONG_SHAPE,
    UNKNOWN_KEY,
    DUPLICATE_KEY,
    MISSING,
    NOT_ONE_OF,
    NOT_A_NUMBER,
    OUT_OF_RANGE,
    NOT_A_COLOUR,
    DUPLICATE_ID,
    UNKNOWN_REFERENCE,
    CONTRADICTION,
    CHANGED_INPUT,
    WRONG_UNIT,
    MORE_PROBLEMS,
    FOLDER_NOT_OURS,
    FILE_EXISTS;

    /** The key under which messages and documents know this kind, such as {@code unknown-key}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
