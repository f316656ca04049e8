package org.loomproof.intake.decode;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Parts a text into lines. */
final class TextLines {

    /** More lines than this are no sheet of one vehicle. */
    static final int MOST_LINES = 200_000;

    /** A longer line is read in pieces, so that no step behind has to look at all of it at once. */
    static final int LONGEST_LINE = 2_000;

    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\t]]");

    private TextLines() {}

    /** The lines, or those up to {@link #MOST_LINES} and one more. */
    static List<Passage> of(String text) {
        List<Passage> lines = new ArrayList<>();
        int number = 1;
        for (int from = 0; from <= text.length() && lines.size() <= MOST_LINES; number++) {
            int end = from;
            while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
                end++;
            }
            add(text.substring(from, end), number, lines);
            boolean two = end + 1 < text.length() && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n';
            from = end + (two ? 2 : 1);
        }
        return lines;
    }

    private static void add(String line, int number, List<Passage> lines) {
        String clean = CONTROL.matcher(line).replaceAll(" ");
        int from = 0;
        while (clean.length() - from > LONGEST_LINE) {
            int cut = clean.lastIndexOf(' ', from + LONGEST_LINE);
            int end = cut > from ? cut : from + LONGEST_LINE;
            lines.add(Passage.line(clean.substring(from, end), number, from + 1));
            from = end;
        }
        lines.add(Passage.line(clean.substring(from), number, from + 1));
    }
}
