package org.loomproof.papers.page;

import java.util.Locale;
import org.loomproof.papers.markup.Element;

/** A mark that says by its shape what its word says, so that neither colour nor language is needed to tell them apart. */
public enum Mark {
    /** A tick in a disc. */
    HOLDS,
    /** A cross in an octagon. */
    BROKEN,
    /** A question mark in a dashed ring. */
    OPEN,
    /** A pen's stroke over a line, in a square. */
    DECLARED,
    /** A bar in a disc. */
    REFUSED,
    /** Two bars in a square. */
    WAITING,
    /** An exclamation mark in a triangle. */
    CAUTION;

    /** The class of the style sheet that colours it. */
    public String styleClass() {
        return "is-" + name().toLowerCase(Locale.ROOT);
    }

    /** The drawn mark, 20 by 20. */
    public Element drawn() {
        Element svg = Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .styled("mark")
                .with("viewBox", "0 0 20 20")
                .with("width", "20")
                .with("height", "20")
                .with("aria-hidden", "true");
        return switch (this) {
            case HOLDS -> svg.add(disc(), cut("M5.5 10.5l3 3 6-7"));
            case BROKEN -> svg.add(fill("M6 1h8l5 5v8l-5 5H6l-5-5V6z"), cut("M6.2 6.2l7.6 7.6M13.8 6.2l-7.6 7.6"));
            case OPEN ->
                svg.add(
                        line("M10 1.5a8.5 8.5 0 1 1-.01 0z").with("stroke-dasharray", "3.4 1.94"),
                        line("M7.4 7.6a2.7 2.7 0 1 1 4 2.4c-1 .6-1.4 1-1.4 2"),
                        fill("M8.9 14h2.2v2.2H8.9z"));
            case DECLARED -> svg.add(fill("M1 1h18v18H1z"), cut("M4.5 15.5h11"), cut("M5 12.4l1-3 6-5.4 2 2.2-6 5.4z"));
            case REFUSED -> svg.add(disc(), cut("M5 8.4h10M5 11.2h10"));
            case WAITING -> svg.add(fill("M1 1h18v18H1z"), cut("M7 5.5v9M13 5.5v9"));
            case CAUTION -> svg.add(fill("M10 1L19.5 18.5H.5z"), cut("M10 7v5.4"), cut("M10 14.6v2"));
        };
    }

    private static Element disc() {
        return fill("M10 .8a9.2 9.2 0 1 1-.01 0z");
    }

    private static Element fill(String path) {
        return Element.of("path").with("d", path).with("fill", "currentColor");
    }

    private static Element line(String path) {
        return Element.of("path")
                .with("d", path)
                .with("fill", "none")
                .with("stroke", "currentColor")
                .with("stroke-width", "2.2");
    }

    /** Drawn in the colour of the paper. */
    private static Element cut(String path) {
        return Element.of("path")
                .styled("cut")
                .with("d", path)
                .with("fill", "none")
                .with("stroke", "#ffffff")
                .with("stroke-width", "2.2");
    }
}
