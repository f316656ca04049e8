package org.loomproof.intake.field;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The stretches of a text between marks of punctuation: commas, colons, brackets, dashes with blanks around. */
public final class Segments {

    private static final Pattern MARK =
            Pattern.compile("[,;:|()\\[\\]\"" + Claims.CLAIMED + "]|\\.(?=\\s|$)|\\s[-=/>]+\\s|\\s{2,}|\t");

    private Segments() {}

    /** From and to of each stretch, in order. */
    public static List<int[]> of(String text) {
        List<int[]> segments = new ArrayList<>();
        Matcher marks = MARK.matcher(text);
        int from = 0;
        while (marks.find()) {
            if (!text.substring(from, marks.start()).isBlank()) {
                segments.add(new int[] {from, marks.start()});
            }
            from = marks.end();
        }
        if (!text.substring(from).isBlank()) {
            segments.add(new int[] {from, text.length()});
        }
        return segments;
    }
}
