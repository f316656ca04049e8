package org.loomproof.papers.pdf;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The paper in the printer. */
public enum Sheet {
    A4("210mm", "297mm", "280mm", "198mm"),
    LETTER("216mm", "279mm", "268mm", "189.5mm");

    private final String narrow;
    private final String wide;
    private final String drawingWidth;
    private final String drawingHeight;

    Sheet(String narrow, String wide, String drawingWidth, String drawingHeight) {
        this.narrow = narrow;
        this.wide = wide;
        this.drawingWidth = drawingWidth;
        this.drawingHeight = drawingHeight;
    }

    /** The sheet of a word. */
    public static Optional<Sheet> of(String word) {
        return Arrays.stream(values())
                .filter(sheet -> sheet.word().equals(word))
                .findFirst();
    }

    /** Its size as a style sheet writes it, upright. */
    String upright() {
        return narrow + " " + wide;
    }

    /** The same, lying. */
    String across() {
        return wide + " " + narrow;
    }

    /** How large a drawing is printed on it, lying, as a style sheet writes it: all drawings have one shape. */
    String drawing() {
        return "width: " + drawingWidth + "; height: " + drawingHeight;
    }

    /** The word used on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
