package org.loomproof.pages.desk;

import java.util.ArrayList;
import java.util.List;

/**
 * What was written over in a text of lines, as lines taken away and lines added in the order of the text; lines that stay are left
 * out. By a longest common subsequence.
 *
 * @param lines in order
 */
public record LineDiff(List<Line> lines) {

    /** A line that is only in one of two texts. */
    public record Line(boolean isAdded, String text) {}

    /** Beyond so many pairs of lines everything between the first and the last difference counts as written anew. */
    private static final long MOST_PAIRS = 4_000_000;

    /** From one text to another. */
    public static LineDiff between(String before, String after) {
        List<String> old = before.isEmpty() ? List.of() : before.lines().toList();
        List<String> next = after.isEmpty() ? List.of() : after.lines().toList();
        int head = 0;
        int least = Math.min(old.size(), next.size());
        while (head < least && old.get(head).equals(next.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < least - head && old.get(old.size() - 1 - tail).equals(next.get(next.size() - 1 - tail))) {
            tail++;
        }
        return new LineDiff(middle(old.subList(head, old.size() - tail), next.subList(head, next.size() - tail)));
    }

    private static List<Line> middle(List<String> old, List<String> next) {
        List<Line> lines = new ArrayList<>();
        int i = 0;
        int j = 0;
        if ((long) old.size() * next.size() <= MOST_PAIRS) {
            int[][] common = common(old, next);
            while (i < old.size() && j < next.size()) {
                if (old.get(i).equals(next.get(j))) {
                    i++;
                    j++;
                } else if (common[i + 1][j] >= common[i][j + 1]) {
                    lines.add(new Line(false, old.get(i++)));
                } else {
                    lines.add(new Line(true, next.get(j++)));
                }
            }
        }
        old.subList(i, old.size()).forEach(line -> lines.add(new Line(false, line)));
        next.subList(j, next.size()).forEach(line -> lines.add(new Line(true, line)));
        return List.copyOf(lines);
    }

    /** How many lines two rests have in common, by where each begins. */
    private static int[][] common(List<String> old, List<String> next) {
        int[][] common = new int[old.size() + 1][next.size() + 1];
        for (int i = old.size() - 1; i >= 0; i--) {
            for (int j = next.size() - 1; j >= 0; j--) {
                common[i][j] = old.get(i).equals(next.get(j))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        return common;
    }
}
