package org.loomproof.intake.layout;

import org.loomproof.intake.decode.Passage;

/**
 * One cell of a record.
 *
 * @param kind what its column holds
 * @param text as written
 * @param takenOver whether it was taken from the row above
 */
public record Cell(ColumnKind kind, Passage text, boolean takenOver) {

    Cell(ColumnKind kind, Passage text) {
        this(kind, text, false);
    }
}
