package org.loomproof.papers.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.Text;

/**
 * A page's content as a printer wants it: a box to tick is a box to write in, a drawing says in words what it is and leaves its
 * size to the style sheet, and every heading can be found from the bookmarks.
 *
 * @param content what stands on the page
 * @param headings the text of each heading by its anchor, in order
 */
record Printed(List<Markup> content, Map<String, String> headings) {

    static Printed of(List<Markup> content) {
        Map<String, String> headings = new LinkedHashMap<>();
        List<Markup> printed = content.stream().map(m -> printed(m, headings)).toList();
        return new Printed(printed, headings);
    }

    /** What the PDF's reader lists beside the pages. */
    Element bookmarks() {
        Element bookmarks = Element.of("bookmarks");
        for (Map.Entry<String, String> heading : headings.entrySet()) {
            bookmarks = bookmarks.add(
                    Element.of("bookmark").with("name", heading.getValue()).with("href", "#" + heading.getKey()));
        }
        return bookmarks;
    }

    private static Markup printed(Markup markup, Map<String, String> headings) {
        return switch (markup) {
            case Text text -> text;
            case Element element ->
                switch (element.name()) {
                    case "input" -> Element.of("span", "\u00A0").styled("tick-box");
                    case "svg" -> described(element);
                    case "h2" -> anchored(element, headings);
                    default -> {
                        List<Markup> children = new ArrayList<>();
                        element.children().forEach(child -> children.add(printed(child, headings)));
                        yield new Element(element.name(), element.attributes(), children);
                    }
                };
        };
    }

    private static Element anchored(Element heading, Map<String, String> headings) {
        String anchor = "heading-" + (headings.size() + 1);
        headings.put(anchor, text(heading));
        List<Markup> children =
                heading.children().stream().map(m -> printed(m, headings)).toList();
        return new Element(heading.name(), heading.attributes(), children).with("id", anchor);
    }

    private static String text(Element element) {
        StringBuilder text = new StringBuilder();
        for (Markup child : element.children()) {
            switch (child) {
                case Text words -> text.append(words.value());
                case Element inner -> text.append(' ').append(text(inner));
            }
        }
        return text.toString().strip();
    }

    private static Element described(Element svg) {
        Map<String, String> attributes = new LinkedHashMap<>(svg.attributes());
        attributes.remove("width");
        attributes.remove("height");
        attributes.put("alt", svg.attributes().getOrDefault("aria-label", " "));
        return new Element(svg.name(), attributes, svg.children());
    }
}
