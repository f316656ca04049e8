package org.loomproof.papers.pdf;

import java.util.Locale;

/** The paper in the printer. */
public enum Sheet {
    A4("210mm", "297mm"),
    LETTER("216mm", "279mm");

    private final String narrow;
    private final String wide;

    Sheet(String narrow, String wide) {
        this.narrow = narrow;
        this.wide = wide;
    }

    /** Its size as a style sheet writes it, upright. */
    String upright() {
        return narrow + " " + wide;
    }

    /** The same, lying. */
    String across() {
        return wide + " " + narrow;
    }

    /** The word used on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
