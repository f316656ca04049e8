package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;

/** What stands between the cells of a row, and how a line is parted by it. */
enum Divider {
    TAB,
    PIPE,
    SEMICOLON,
    GAPS,
    COMMA,
    DASH,
    /** {@code horn => red => column}. */
    ARROW,
    /** {@code [horn][red][column]}. */
    BRACKETS,
    NONE;

    /** Blanks, or the underscores that stand for them under a heading. */
    private static final Pattern GAP = Pattern.compile("[\\s_]{2,}(?!\\s|[*\u2020\u2021](?:\\s|$))");

    private static final Pattern DASHES = Pattern.compile("\\s+-{1,2}\\s+");
    private static final Pattern ARROWS = Pattern.compile("\\s*(?:[=-]+>+|\u2192|\u00bb)\\s*");
    private static final Pattern IN_BRACKETS = Pattern.compile("\\[([^\\[\\]]*)\\]");
    private static final int LEAST_ROWS = 2;

    /** The divider of a block of lines, by what most of them have. */
    static Divider of(List<Passage> lines) {
        if (share(lines, BRACKETS, 3) >= 0.5) {
            return BRACKETS;
        }
        if (lines.size() >= LEAST_ROWS && share(lines, ARROW, 3) >= 0.5) {
            return ARROW;
        }
        if (share(lines, TAB, 2) >= 0.5) {
            return TAB;
        }
        if (share(lines, PIPE, 2) >= 0.5) {
            return PIPE;
        }
        if (share(lines, SEMICOLON, 3) >= 0.5) {
            return SEMICOLON;
        }
        if (share(lines, GAPS, 2) >= 0.5 && share(lines, COMMA, 3) < 0.8) {
            return GAPS;
        }
        if (isEven(lines, COMMA)) {
            return COMMA;
        }
        return isEven(lines, DASH) ? DASH : NONE;
    }

    /** True for dividers that are common in sentences too: they make a table only when its columns turn out as such. */
    boolean isWeak() {
        return this == COMMA || this == DASH;
    }

    private static double share(List<Passage> lines, Divider divider, int cells) {
        long parted = lines.stream()
                .filter(l -> divider.split(l).stream().filter(c -> !c.isBlank()).count() >= cells
                        || (divider != GAPS && divider.split(l).size() >= cells + 1))
                .count();
        return parted / (double) lines.size();
    }

    private static boolean isEven(List<Passage> lines, Divider divider) {
        List<Integer> counts = lines.stream().map(l -> divider.split(l).size()).toList();
        int usual = counts.stream()
                .max(java.util.Comparator.comparingLong(
                        c -> counts.stream().filter(c::equals).count()))
                .orElse(0);
        long same = counts.stream().filter(c -> c == usual).count();
        return usual >= 3 && lines.size() >= LEAST_ROWS && same >= 0.7 * lines.size();
    }

    /** The cells of a line; a line that is not parted is one cell. */
    List<Passage> split(Passage line) {
        return switch (this) {
            case TAB -> bySign(line, '\t');
            case PIPE -> withoutFrame(bySign(line, '|'), isFramed(line.text()));
            case SEMICOLON -> bySign(line, ';');
            case COMMA -> bySign(line, ',');
            case GAPS -> byPattern(line, GAP);
            case DASH -> byPattern(line, DASHES);
            case ARROW -> hasArrow(line.text()) ? byPattern(line, ARROWS) : whole(line);
            case BRACKETS -> byBrackets(line);
            case NONE -> whole(line);
        };
    }

    private static boolean hasArrow(String text) {
        return text.indexOf('>') >= 0 || text.indexOf('\u2192') >= 0 || text.indexOf('\u00bb') >= 0;
    }

    private static List<Passage> whole(Passage line) {
        return List.of(line.slice(0, line.length()));
    }

    /** At each sign outside of quotes. */
    private static List<Passage> bySign(Passage line, char sign) {
        List<Passage> cells = new ArrayList<>();
        String text = line.text();
        boolean quoted = false;
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            // A quote opens only at the head of a cell: an inch sign or a "same as above" does not.
            if (c == '"' && (quoted || (text.substring(from, i).isBlank() && text.indexOf('"', i + 1) > i + 1))) {
                quoted = !quoted;
            } else if (c == sign && !quoted) {
                cells.add(unquoted(line.slice(from, i), sign));
                from = i + 1;
            }
        }
        cells.add(unquoted(line.slice(from, text.length()), sign));
        return cells;
    }

    private static Passage unquoted(Passage cell, char sign) {
        String text = cell.text();
        if (text.equals("\"\"")) {
            // Between commas two quotes are an empty cell; between tabs people write them for "same as above".
            return sign == ',' || sign == ';' ? cell.slice(0, 0) : cell;
        }
        boolean quotes = text.length() > 2 && text.startsWith("\"") && text.endsWith("\"");
        return quotes ? cell.slice(1, text.length() - 1) : cell;
    }

    /** True when the first sign is the edge of the table, and not the end of an empty first cell, which is as wide as its column. */
    private static boolean isFramed(String text) {
        String bare = text.stripTrailing();
        return bare.endsWith("|") || bare.indexOf('|') <= WIDEST_EDGE;
    }

    private static final int WIDEST_EDGE = 2;

    private static List<Passage> withoutFrame(List<Passage> cells, boolean framed) {
        List<Passage> inner = new ArrayList<>(cells);
        if (framed && inner.size() > 1 && inner.getFirst().isBlank()) {
            inner.removeFirst();
        }
        if (inner.size() > 1 && inner.getLast().isBlank()) {
            inner.removeLast();
        }
        return inner;
    }

    /** What each pair of brackets holds, an empty one too. */
    private static List<Passage> byBrackets(Passage line) {
        List<Passage> cells = new ArrayList<>();
        Matcher matcher = IN_BRACKETS.matcher(line.text());
        int from = 0;
        while (matcher.find()) {
            if (!line.text().substring(from, matcher.start()).isBlank()) {
                cells.add(line.slice(from, matcher.start()));
            }
            cells.add(line.slice(matcher.start(1), matcher.end(1)));
            from = matcher.end();
        }
        if (from == 0 || !line.text().substring(from).isBlank()) {
            cells.add(line.slice(from, line.length()));
        }
        return cells;
    }

    private static List<Passage> byPattern(Passage line, Pattern between) {
        List<Passage> cells = new ArrayList<>();
        Matcher matcher = between.matcher(line.text());
        int from = 0;
        while (matcher.find()) {
            if (matcher.start() > from
                    && !line.text().substring(from, matcher.start()).isBlank()) {
                cells.add(line.slice(from, matcher.start()));
            }
            from = matcher.end();
        }
        cells.add(line.slice(from, line.length()));
        return cells.stream().filter(c -> !c.isBlank()).toList();
    }
}
