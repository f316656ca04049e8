package org.loomproof.intake.decode;

/**
 * Where something stands in the source.
 *
 * @param line from 1
 * @param column of the first character, from 1
 * @param lastLine the line it ends on
 * @param lastColumn of the last character
 */
public record Origin(int line, int column, int lastLine, int lastColumn) {

    /** From where this begins to where the other ends. */
    public Origin through(Origin other) {
        return new Origin(line, column, other.lastLine, other.lastColumn);
    }

    /** The short form: {@code 3:5-12}, or {@code 3:5-4:9} over several lines. */
    @Override
    public String toString() {
        return line + ":" + column + "-" + (lastLine == line ? "" : lastLine + ":") + lastColumn;
    }
}
