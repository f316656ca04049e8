package org.loomproof.papers.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.Text;

/**
 * A page's content as a printer wants it: a box to tick is a box to write in, a drawing says in words what it is and leaves its
 * size to the style sheet, and every heading can be found from the bookmarks.
 *
 * @param content what stands on the page
 * @param headings the text of each heading by its anchor, in order
 * @param rooms millimetres that must be left on a page for a heading to begin there, by its anchor: a table's head is no company
 *     for it, so that there must be room for the first row too
 */
record Printed(List<Markup> content, Map<String, String> headings, Map<String, Integer> rooms) {

    /** The classes of lists whose items stand beside each other. */
    private static final Set<String> BESIDE = Set.of("tiles", "tally", "terminals");

    private static final Set<String> ITEMS = Set.of("p", "li");

    /** Of heading and table head together, and the least of a paragraph or an item, which may be of two short lines. */
    private static final int HEADS_MILLIMETRES = 28;

    private static final int ITEM_MILLIMETRES = 6;

    /** Of a line, and the letters that it holds in a narrow column and across a sheet. */
    private static final int LINE_MILLIMETRES = 4;

    private static final int LETTERS_A_LINE = 36;

    private static final int LETTERS_ACROSS = 90;

    /** More than a page can always give. */
    private static final int MOST_MILLIMETRES = 230;

    static Printed of(List<Markup> content) {
        Map<String, String> headings = new LinkedHashMap<>();
        Map<String, Integer> rooms = new LinkedHashMap<>();
        List<Markup> printed = printed(content, headings);
        rooms(printed, rooms);
        return new Printed(printed, headings, rooms);
    }

    /** The same as rules of a style sheet. */
    String roomRules() {
        StringBuilder rules = new StringBuilder();
        rooms.forEach((anchor, millimetres) ->
                rules.append("#%s { -fs-page-break-min-height: %dmm; }%n".formatted(anchor, millimetres)));
        return rules.toString();
    }

    private static void rooms(List<Markup> siblings, Map<String, Integer> rooms) {
        String heading = "";
        int between = 0;
        for (Markup sibling : siblings) {
            if (!(sibling instanceof Element element)) {
                continue;
            }
            switch (element.name()) {
                case "h2" -> {
                    heading = element.attributes().getOrDefault("id", "");
                    between = 0;
                }
                case "p" -> between += millimetres(element, LETTERS_ACROSS);
                case "table" -> {
                    if (!heading.isEmpty()) {
                        int needed = HEADS_MILLIMETRES + between + firstRow(element);
                        rooms.put(heading, Math.min(MOST_MILLIMETRES, needed));
                        heading = "";
                    }
                }
                default -> rooms(element.children(), rooms);
            }
        }
    }

    /** Millimetres of a table's first row: of all its paragraphs and items, as if they stood under each other, or of its longest cell. */
    private static int firstRow(Element table) {
        return find(table, "tbody")
                .flatMap(body -> find(body, "tr"))
                .map(row -> Math.max(
                        millimetres(row),
                        elements(row)
                                .mapToInt(cell -> millimetres(cell, LETTERS_A_LINE))
                                .max()
                                .orElse(0)))
                .orElse(0);
    }

    private static Optional<Element> find(Element parent, String name) {
        return elements(parent).filter(child -> child.name().equals(name)).findFirst();
    }

    private static int millimetres(Element parent) {
        return elements(parent)
                .mapToInt(child -> ITEMS.contains(child.name()) ? item(child) : millimetres(child))
                .sum();
    }

    private static int item(Element item) {
        return Math.max(ITEM_MILLIMETRES, millimetres(item, LETTERS_A_LINE));
    }

    private static int millimetres(Element parent, int lettersALine) {
        return LINE_MILLIMETRES * Math.ceilDiv(text(parent).length(), lettersALine);
    }

    private static Stream<Element> elements(Element parent) {
        return parent.children().stream().filter(Element.class::isInstance).map(Element.class::cast);
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

    private static List<Markup> printed(List<Markup> content, Map<String, String> headings) {
        List<Markup> printed = new ArrayList<>();
        content.forEach(markup -> printed.add(printed(markup, headings)));
        return printed;
    }

    private static Markup printed(Markup markup, Map<String, String> headings) {
        return switch (markup) {
            case Text text -> text;
            case Element element ->
                switch (element.name()) {
                    case "input" -> Element.of("span", "\u00A0").styled("tick-box");
                    case "svg" ->
                        styled(element).with("alt", element.attributes().getOrDefault("aria-label", " "));
                    case "img" -> styled(element);
                    case "h2" -> anchored(element, headings);
                    case "ul" -> list(element, headings);
                    // On paper nothing leads anywhere.
                    case "a" -> new Element("span", Map.of(), printed(element.children(), headings));
                    default -> new Element(element.name(), element.attributes(), printed(element.children(), headings));
                };
        };
    }

    /** Items that stand beside each other are no list for the printer, which would lose their tags. */
    private static Element list(Element list, Map<String, String> headings) {
        List<Markup> items = printed(list.children(), headings);
        if (!BESIDE.contains(list.attributes().getOrDefault("class", ""))) {
            return new Element("ul", list.attributes(), items);
        }
        List<Markup> boxes = new ArrayList<>();
        for (Markup item : items) {
            boxes.add(item instanceof Element li ? new Element("div", li.attributes(), li.children()) : item);
        }
        return new Element("div", list.attributes(), boxes);
    }

    private static Element anchored(Element heading, Map<String, String> headings) {
        String anchor = "heading-" + (headings.size() + 1);
        headings.put(anchor, text(heading));
        return new Element(heading.name(), heading.attributes(), printed(heading.children(), headings))
                .with("id", anchor);
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

    /** As large as the style sheet says and no more: sizes of its own would stretch it. */
    private static Element styled(Element drawn) {
        Map<String, String> attributes = new LinkedHashMap<>(drawn.attributes());
        attributes.remove("width");
        attributes.remove("height");
        return new Element(drawn.name(), attributes, drawn.children());
    }
}
