package org.loomproof.workshop.trade.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A data file of bench knowledge: lines of comma-separated cells under a line of column names. Lines that begin with
 * {@code #} come first and say what the figures are and where they come from; among them {@code # source:} must stand.
 * Every row has a {@code status} cell. The last column takes the rest of its line, commas included. A file that does not
 * keep to this is our own mistake and is told at once.
 */
public final class Table {
    private final String source;
    private final List<Row> rows;

    private Table(String source, List<Row> rows) {
        this.source = source;
        this.rows = List.copyOf(rows);
    }

    /** The table in the file that lies beside the class. */
    public static Table read(Class<?> beside, String file) {
        try (InputStream in = beside.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("data file " + file + " is not beside " + beside.getName());
            }
            return parse(
                    file,
                    new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                            .lines()
                            .toList());
        } catch (IOException e) {
            throw new UncheckedIOException("data file " + file + " cannot be read", e);
        }
    }

    static Table parse(String file, List<String> lines) {
        String source = "";
        List<String> columns = List.of();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            String where = file + ":" + (i + 1);
            if (line.startsWith("# source:")) {
                source = line.substring("# source:".length()).strip();
            } else if (isText(line) && columns.isEmpty()) {
                columns = List.of(line.split(",", -1));
            } else if (isText(line)) {
                rows.add(new Row(where, cells(columns, line, where)));
            }
        }
        if (source.isEmpty() || !columns.contains("status")) {
            throw new IllegalStateException(file + " needs a line '# source:' and a column 'status'");
        }
        return new Table(source, rows);
    }

    private static boolean isText(String line) {
        return !line.startsWith("#") && !line.isBlank();
    }

    private static Map<String, String> cells(List<String> columns, String line, String where) {
        String[] cells = line.split(",", columns.size());
        if (cells.length != columns.size()) {
            throw new IllegalStateException(
                    where + ": " + cells.length + " cells under " + columns.size() + " columns");
        }
        Map<String, String> byColumn = new LinkedHashMap<>();
        for (int i = 0; i < cells.length; i++) {
            byColumn.put(columns.get(i), cells[i].strip());
        }
        return byColumn;
    }

    /** Where the figures come from, in words. */
    public String source() {
        return source;
    }

    /** All rows, in the order of the file. */
    public List<Row> listRows() {
        return rows;
    }

    /** The first row whose cell in the column is the text. */
    public Optional<Row> findRow(String column, String text) {
        return rows.stream().filter(row -> row.text(column).equals(text)).findFirst();
    }
}
