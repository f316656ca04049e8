package org.loomproof.cli.report;

import java.util.ArrayList;
import java.util.List;

/** Lines of text no wider than a terminal. */
final class Lines {

    /** The width every line keeps to, in characters. */
    static final int WIDTH = 80;

    private final List<String> lines = new ArrayList<>();

    /** A line cut to the width; what is cut off is marked, since the papers hold it in full. */
    Lines cut(String line) {
        lines.add(fitted(line, WIDTH));
        return this;
    }

    /** A text broken at spaces, each further line indented. */
    Lines wrap(String text, String indent) {
        StringBuilder line = new StringBuilder();
        String lead = text.substring(0, text.length() - text.stripLeading().length());
        for (String word : text.strip().split("\\s+", -1)) {
            if (!line.isEmpty() && lead.length() + line.length() + 1 + word.length() > WIDTH) {
                cut(lead + line);
                line.setLength(0);
                lead = indent;
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        return cut(lead + line);
    }

    /** An empty line, unless one stands there already. */
    Lines gap() {
        if (!lines.isEmpty() && !lines.getLast().isEmpty()) {
            lines.add("");
        }
        return this;
    }

    /** What was collected. */
    List<String> all() {
        return List.copyOf(lines);
    }

    /** The text in a column of the given width: cut with a mark, or filled with spaces. */
    static String column(String text, int width) {
        String fitted = fitted(text, width);
        return fitted + " ".repeat(width - length(fitted));
    }

    private static String fitted(String text, int width) {
        String line = text.replaceAll("\\p{Cntrl}", " ").stripTrailing();
        if (length(line) <= width) {
            return line;
        }
        return line.substring(0, line.offsetByCodePoints(0, width - 1)) + "…";
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
