package org.loomproof.workshop.trade.table;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * One line of a {@link Table}.
 *
 * @param where file and line, for messages
 * @param cells text by column; an empty text means not known
 */
public record Row(String where, Map<String, String> cells) {
    public Row {
        cells = Map.copyOf(cells);
    }

    /** The cell's text, empty when nothing stands there; the column must exist. */
    public String text(String column) {
        String text = cells.get(column);
        if (text == null) {
            throw new IllegalStateException(where + ": no column " + column);
        }
        return text;
    }

    /** The cell as a number; it must be one. */
    public double number(String column) {
        return findNumber(column)
                .orElseThrow(() -> new IllegalStateException(where + ": no number in column " + column));
    }

    /** The cell as a number, when something stands there. */
    public OptionalDouble findNumber(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            throw new IllegalStateException(where + ": " + text + " is not a number", e);
        }
    }

    /** How the row's figures came to be there. */
    public Status status() {
        return Status.of(text("status"), where);
    }
}
