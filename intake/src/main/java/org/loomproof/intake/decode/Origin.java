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

    /** From where the first of the two begins to where the last ends. */
    public Origin through(Origin other) {
        boolean first = line < other.line || (line == other.line && column <= other.column);
        boolean last = lastLine > other.lastLine || (lastLine == other.lastLine && lastColumn >= other.lastColumn);
        return new Origin(
                first ? line : other.line,
                first ? column : other.column,
                last ? lastLine : other.lastLine,
                last ? lastColumn : other.lastColumn);
    }

    /** The short form: {@code 3:5-12}, or {@code 3:5-4:9} over several lines. */
    @Override
    public String toString() {
        return line + ":" + column + "-" + (lastLine == line ? "" : lastLine + ":") + lastColumn;
    }
}
