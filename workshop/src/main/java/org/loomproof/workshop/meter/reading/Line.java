package org.loomproof.workshop.meter.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;

/**
 * The cells of one line under their header. A decimal comma that the separator tore apart is put together again: behind a
 * value no unit starts with a digit, and a line with a cell too many has a torn battery.
 */
final class Line {

    private final List<String> header;
    private final List<String> cells;
    private final int number;

    private Line(List<String> header, List<String> cells, int number) {
        this.header = header;
        this.cells = cells;
        this.number = number;
    }

    static Line of(List<String> header, CSVRecord row, int number, char separator) {
        List<String> cells = new ArrayList<>();
        row.forEach(cell -> cells.add(cell.strip()));
        if (separator == ',') {
            mend(cells, header.indexOf("value"), true);
            mend(cells, header.indexOf("battery"), cells.size() > header.size());
        }
        while (cells.size() > header.size() && cells.getLast().isEmpty()) {
            cells.removeLast();
        }
        return new Line(header, cells, number);
    }

    private static void mend(List<String> cells, int at, boolean torn) {
        if (torn
                && at >= 0
                && at + 1 < cells.size()
                && cells.get(at).matches("(?i)[~≈<]?(ac\\s*)?[+-]?\\d{1,4}|.*\\.\\.[+-]?\\d{1,4}")
                && cells.get(at + 1).matches("\\d{1,3}(?!\\d).*")) {
            cells.set(at, cells.get(at) + "," + cells.remove(at + 1));
        }
    }

    /** The line's number in the file, from 1. */
    int number() {
        return number;
    }

    /** The cell of a column, empty when there is none. */
    String cell(String column) {
        int at = header.indexOf(column);
        return at >= 0 && at < cells.size() ? cells.get(at) : "";
    }

    /** True when there are more cells than columns. */
    boolean isTooLong() {
        return cells.size() > header.size();
    }

    /** True when nothing stands in it, or it is a remark. */
    boolean isIdle() {
        return cells.stream().allMatch(String::isEmpty) || cells.getFirst().startsWith("#");
    }

    /** A header's cell as a column's name. */
    static String column(String cell) {
        return cell.strip().toLowerCase(Locale.ROOT);
    }
}
