package org.loomproof.papers.markup;

import java.util.Set;

/**
 * Writes a tree so that it reads the same as HTML and as XML. This is the only place where characters are escaped.
 *
 * <p>Characters that XML cannot hold become U+FFFD, and so do those that steer the direction of text (U+202A to U+202E,
 * U+2066 to U+2069): on a paper they could make a wire's name read backwards.
 */
public final class MarkupWriter {

    /** HTML's elements that have no end tag, and those of SVG that we leave empty. */
    private static final Set<String> LEAVES = Set.of(
            "br", "col", "hr", "img", "input", "link", "meta", "wbr", "path", "line", "rect", "circle", "polygon",
            "use");

    /** After these a line ends, for whoever reads the source. */
    static final Set<String> LINE_ENDS = Set.of(
            "head", "body", "header", "main", "footer", "section", "article", "nav", "div", "h1", "h2", "h3", "p", "ul",
            "ol", "li", "dl", "dt", "dd", "table", "thead", "tbody", "tr", "figure", "style", "title", "meta", "svg",
            "g", "path", "line", "rect", "circle", "polygon", "text");

    private final StringBuilder out = new StringBuilder();

    private MarkupWriter() {}

    /** A whole HTML page. */
    public static String html(Element root) {
        return "<!DOCTYPE html>\n" + fragment(root);
    }

    /** A whole XML document, such as a drawing. */
    public static String xml(Element root) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + fragment(root);
    }

    /** The tree alone. */
    public static String fragment(Element root) {
        MarkupWriter writer = new MarkupWriter();
        writer.write(root);
        return writer.out.toString();
    }

    private void write(Element element) {
        out.append('<').append(element.name());
        element.attributes().forEach((name, value) -> {
            out.append(' ').append(name).append("=\"");
            escape(value, true);
            out.append('"');
        });
        if (LEAVES.contains(element.name()) && element.children().isEmpty()) {
            out.append("/>");
        } else {
            out.append('>');
            for (Markup child : element.children()) {
                switch (child) {
                    case Element inner -> write(inner);
                    case Text text -> writeText(element, text.value());
                }
            }
            out.append("</").append(element.name()).append('>');
        }
        if (LINE_ENDS.contains(element.name())) {
            out.append('\n');
        }
    }

    private void writeText(Element parent, String text) {
        boolean isOwnCode = parent.name().equals("style");
        if (isOwnCode && text.chars().anyMatch(c -> c == '<' || c == '>' || c == '&')) {
            throw new IllegalArgumentException(
                    "a style sheet with <, > or & does not read the same as HTML and as XML");
        }
        escape(text, false);
    }

    private void escape(String text, boolean attribute) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append(attribute ? "&quot;" : "\"");
                case '\n', '\t' -> out.append(attribute ? "&#" + c + ";" : Character.toString(c));
                default -> out.appendCodePoint(isFit(c) ? c : 0xFFFD);
            }
        });
    }

    /** Text outside a page, with what no page would take replaced in the same way; line ends and tabs stay. */
    public static String clean(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().forEach(c -> clean.appendCodePoint(c == '\n' || c == '\t' || isFit(c) ? c : 0xFFFD));
        return clean.toString();
    }

    private static boolean isFit(int c) {
        boolean isXml = (c >= 0x20 && c < 0xD800) || (c >= 0xE000 && c < 0xFFFE) || c >= 0x10000;
        boolean isControl = c >= 0x7F && c <= 0x9F;
        boolean isNoncharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        boolean steersDirection = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        return isXml && !isControl && !isNoncharacter && !steersDirection;
    }
}
