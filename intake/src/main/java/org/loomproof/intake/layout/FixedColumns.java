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
        for (int i = 0; i < width; i++) {
            boolean afterGutter = i == 0 || (!filled[i - 1] && (i == 1 || !filled[i - 2]));
            if (filled[i] && (starts.isEmpty() || afterGutter)) {
                starts.add(i);
            }
        }
        int most = looked.stream()
                .mapToInt(r -> Divider.GAPS.split(r).size())
                .max()
                .orElse(0);
        return starts.size() >= most && starts.size() > 1 ? Optional.of(new FixedColumns(starts)) : Optional.empty();
    }

    /** A blank, or an underscore that stands for one beside another. */
    private static boolean isGap(String text, int at) {
        char here = text.charAt(at);
        boolean drawn = here == '_'
                && ((at > 0 && text.charAt(at - 1) == '_') || (at + 1 < text.length() && text.charAt(at + 1) == '_'));
        return drawn || Character.isWhitespace(here);
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
