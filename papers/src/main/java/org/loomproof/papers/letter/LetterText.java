package org.loomproof.papers.letter;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.papers.markup.MarkupWriter;

/** A letter as plain text for a message: no line is wider than a phone shows without breaking it twice. */
final class LetterText {

    private static final int WIDTH = 64;

    private LetterText() {}

    static String of(Letter letter) {
        List<String> lines = new ArrayList<>();
        lines.add(letter.title());
        for (Letter.Block block : letter.blocks()) {
            lines.add("");
            if (!block.heading().isEmpty()) {
                lines.add(block.heading() + ":");
            }
            switch (block) {
                case Letter.Block.Points(var heading, var points) -> points.forEach(p -> point(p, lines));
                case Letter.Block.Signed(var heading, var points, var fields) -> {
                    points.forEach(p -> point(p, lines));
                    fields.forEach(field -> lines.add(blank(field)));
                }
                case Letter.Block.Beware(var heading, var points) -> points.forEach(p -> point(p, lines));
                case Letter.Block.Sums(var heading, var rows) -> rows.forEach(row -> sum(row, lines));
            }
        }
        return MarkupWriter.clean(String.join("\n", lines) + "\n");
    }

    /** A line to write on, or to answer. */
    private static String blank(String field) {
        return field + ": " + "_".repeat(Math.max(8, WIDTH - field.length() - 2));
    }

    private static void point(String sentence, List<String> lines) {
        String indent = "- ";
        for (String line : folded(sentence, WIDTH - indent.length())) {
            lines.add(indent + line);
            indent = "  ";
        }
    }

    /** The amount ends at the right edge: beside the last words of what it is for, or under them where they leave no room. */
    private static void sum(Letter.Row row, List<String> lines) {
        List<String> what =
                new ArrayList<>(folded(row.what(), WIDTH - row.amount().length() - 2));
        if (what.getLast().length() + row.amount().length() >= WIDTH) {
            what.add("");
        }
        String last = what.removeLast();
        lines.addAll(what);
        int gap = Math.max(0, WIDTH - last.length() - row.amount().length());
        lines.add(last + " ".repeat(gap) + row.amount());
    }

    private static List<String> folded(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
