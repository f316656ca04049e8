package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.intake.decode.Passage;

/**
 * Columns at fixed places, found by the gutters that run down through all rows. With them a row may leave a cell empty,
 * which gaps alone cannot tell.
 */
final class FixedColumns {

    private static final int LEAST_ROWS = 3;
    private static final int MOST_ROWS = 500;
    private static final double MOST = 0.6;
    private static final String FOOTNOTE_MARKS = "*\u2020\u2021";

    private final List<Integer> starts;

    private FixedColumns(List<Integer> starts) {
        this.starts = starts;
    }

    /** The columns of these rows, when gutters part them at least as finely as gaps do. */
    static Optional<FixedColumns> of(List<Passage> rows) {
        List<Passage> looked = rows.stream().limit(MOST_ROWS).toList();
        if (looked.size() < LEAST_ROWS) {
            return Optional.empty();
        }
        int width = looked.stream().mapToInt(Passage::length).max().orElse(0);
        boolean[] filled = new boolean[width + 2];
        for (Passage row : looked) {
            for (int i = 0; i < row.length(); i++) {
                filled[i] |= !isGap(row.text(), i);
            }
        }
        List<Integer> starts = new ArrayList<>();
        boolean narrow = false;
        for (int i = 0; i < width; i++) {
            boolean afterGutter = i == 0 || (!filled[i - 1] && (i == 1 || !filled[i - 2]));
            boolean afterNarrow = i > 1 && !afterGutter && !filled[i - 1] && mostBeginAt(i, looked);
            if (filled[i] && (starts.isEmpty() || afterGutter || afterNarrow)) {
                starts.add(i);
                narrow |= afterNarrow;
            }
        }
        int most = looked.stream()
                .mapToInt(r -> Divider.GAPS.split(r).size())
                .max()
                .orElse(0);
        FixedColumns columns = new FixedColumns(starts);
        boolean isWhole = !narrow || looked.stream().allMatch(columns::keepsGaps);
        return starts.size() >= most && starts.size() > 1 && isWhole ? Optional.of(columns) : Optional.empty();
    }

    /** True when no cell of the row is two by its gaps. */
    private boolean keepsGaps(Passage row) {
        long filled = split(row).stream().filter(cell -> !cell.isBlank()).count();
        return filled >= Divider.GAPS.split(row).size();
    }

    /** True when most rows have a cell that begins there behind a gap: one long cell before it narrows no gutter of the others. */
    private static boolean mostBeginAt(int column, List<Passage> rows) {
        long begin = rows.stream()
                .filter(row -> column < row.length()
                        && !isGap(row.text(), column)
                        && isGap(row.text(), column - 1)
                        && isGap(row.text(), column - 2))
                .count();
        return begin > MOST * rows.size();
    }

    /** A blank, or an underscore that stands for one beside another. */
    private static boolean isGap(String text, int at) {
        char here = text.charAt(at);
        boolean drawn = here == '_'
                && ((at > 0 && text.charAt(at - 1) == '_') || (at + 1 < text.length() && text.charAt(at + 1) == '_'));
        return drawn || Character.isWhitespace(here) || isMarkAlone(text, at);
    }

    /** A footnote's mark with blanks around belongs to the cell before it. */
    private static boolean isMarkAlone(String text, int at) {
        return FOOTNOTE_MARKS.indexOf(text.charAt(at)) >= 0
                && at > 0
                && Character.isWhitespace(text.charAt(at - 1))
                && (at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1)));
    }

    /** True when the line is one stretch that begins where a column but the first does and ends before the next: its cell goes on there. */
    boolean goesOn(Passage line) {
        int from = line.length() - line.text().stripLeading().length();
        int column = starts.indexOf(from);
        return column > 0
                && (column + 1 == starts.size() || line.text().stripTrailing().length() < starts.get(column + 1));
    }

    List<Passage> split(Passage row) {
        List<Passage> cells = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            int from = Math.min(starts.get(i), row.length());
            int to = i + 1 < starts.size() ? Math.min(starts.get(i + 1), row.length()) : row.length();
            cells.add(row.slice(from, to));
        }
        return cells;
    }
}
