package org.loomproof.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/** Shapes in which people write a sheet: rows of role, colour, polarity and place become a text. */
final class Shapes {

    static final int COUNT = 12;

    private final Random random;
    private final String language;
    private final String[] header;

    Shapes(Random random, String language, String[] header) {
        this.random = random;
        this.language = language;
        this.header = header;
    }

    /** Whether the shape tells where a wire is found. */
    static boolean saysPlace(int shape) {
        return shape != 5;
    }

    String text(int shape, List<String[]> rows) {
        return switch (shape) {
            case 0 -> table(rows, "\t", true);
            case 1 -> table(rows, "\t", false);
            case 2 -> table(rows, " | ", true);
            case 3 -> table(rows, ";", true);
            case 4 -> csv(rows);
            case 5 -> lines(rows);
            case 6 -> fixed(rows);
            case 7 -> forms(rows);
            case 8 -> page(rows);
            case 9 -> prose(rows);
            case 10 -> headings(rows);
            default -> dittos(rows);
        };
    }

    /** A table whose columns stand in any order; a second row of the same place may say "same as above". */
    private String table(List<String[]> rows, String between, boolean headed) {
        int[] order = order();
        StringBuilder text = new StringBuilder();
        if (headed) {
            text.append(row(header, order, between)).append('\n');
        }
        rows.forEach(r -> text.append(row(r, order, between)).append('\n'));
        return text.toString();
    }

    private int[] order() {
        List<Integer> order = new ArrayList<>(List.of(1, 2, 3));
        if (random.nextInt(3) == 0) {
            Collections.shuffle(order, random);
        }
        order.addFirst(0);
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    private static String row(String[] cells, int[] order, String between) {
        return Arrays.stream(order).mapToObj(i -> cells[i]).collect(Collectors.joining(between));
    }

    private String csv(List<String[]> rows) {
        int[] order = order();
        List<String[]> all = new ArrayList<>(rows);
        all.addFirst(header);
        return all.stream()
                .map(r -> row(
                        Arrays.stream(r)
                                .map(c -> c.contains(",") || random.nextInt(6) == 0 ? '"' + c + '"' : c)
                                .toArray(String[]::new),
                        order,
                        ","))
                .collect(Collectors.joining("\n"));
    }

    /** "starter - red/black - (+)", one a line. */
    private static String lines(List<String[]> rows) {
        return rows.stream()
                .map(r -> Arrays.stream(r).limit(3).filter(c -> !c.isEmpty()).collect(Collectors.joining(" - ")))
                .collect(Collectors.joining("\n"));
    }

    private String fixed(List<String[]> rows) {
        List<String[]> all = new ArrayList<>(rows);
        all.addFirst(header);
        int[] widths = new int[header.length];
        all.forEach(r -> {
            for (int i = 0; i < r.length; i++) {
                widths[i] = Math.max(widths[i], r[i].length() + 3);
            }
        });
        return all.stream()
                .map(r -> {
                    StringBuilder line = new StringBuilder();
                    for (int i = 0; i < r.length; i++) {
                        line.append(r[i]).append(" ".repeat(widths[i] - r[i].length()));
                    }
                    return line.toString().stripTrailing();
                })
                .collect(Collectors.joining("\n"));
    }

    /** A circuit a block, each field behind its name. */
    private String forms(List<String[]> rows) {
        StringBuilder text = new StringBuilder();
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                if (!row[i].isEmpty()) {
                    text.append(header[i]).append(": ").append(row[i]).append('\n');
                }
            }
            text.append('\n');
        }
        return text.toString();
    }

    private String page(List<String[]> rows) {
        List<String[]> all = new ArrayList<>(rows);
        all.addFirst(header);
        return all.stream()
                .map(r -> Arrays.stream(r)
                        .map(c -> "<td>" + c.replace("&", "&amp;") + "</td>")
                        .collect(Collectors.joining("", "<tr>", "</tr>")))
                .collect(Collectors.joining("\n", "<html><body><table>\n", "\n</table></body></html>"));
    }

    private String prose(List<String[]> rows) {
        return rows.stream().map(this::sentence).collect(Collectors.joining("\n"));
    }

    /** A place over the circuits found there, one circuit a line. */
    private static String headings(List<String[]> rows) {
        StringBuilder text = new StringBuilder();
        String place = "";
        for (String[] r : rows) {
            if (!r[3].equals(place)) {
                place = r[3];
                text.append(text.isEmpty() ? "" : "\n").append(place).append(":\n");
            }
            text.append(r[0]).append(" - ").append(r[1]);
            text.append(r[2].isEmpty() ? "" : " - " + r[2]).append('\n');
        }
        return text.toString();
    }

    /** A table in which a place that is that of the row above is said so. */
    private String dittos(List<String[]> rows) {
        StringBuilder text = new StringBuilder(String.join("\t", header)).append('\n');
        String place = "";
        for (String[] r : rows) {
            String same = language.equals("en") ? "same" : language.equals("de") ? "dito" : "idem";
            text.append(r[0] + "\t" + r[1] + "\t" + r[2] + "\t" + (r[3].equals(place) ? same : r[3]))
                    .append('\n');
            place = r[3];
        }
        return text.toString();
    }

    private String sentence(String[] r) {
        String pole = r[2].isEmpty() ? "" : ", " + r[2];
        boolean led = r[3].matches("(behind|under|hinter|detrás|derrière) .*");
        return switch (language) {
            case "en" -> "The " + r[0] + " is the " + r[1] + " wire " + (led ? "" : "at the ") + r[3] + pole + ".";
            case "de" -> r[0] + " ist das Kabel " + r[1] + pole + ", Ort: " + r[3] + ".";
            case "es" -> r[0] + " es el cable " + r[1] + pole + (led ? ", " : ", en ") + r[3] + ".";
            default -> r[0] + " est le fil " + r[1] + pole + (led ? ", " : ", dans ") + r[3] + ".";
        };
    }
}
