package org.loomproof.papers.markup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * One element with its attributes and what it holds. Names come from our own code and are checked; values and text may
 * come from anybody.
 *
 * @param name such as {@code td} or {@code path}
 * @param attributes in the order they were added
 * @param children in order
 */
public record Element(String name, Map<String, String> attributes, List<Markup> children) implements Markup {

    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9:-]*");

    public Element {
        checkName(name);
        attributes.keySet().forEach(Element::checkName);
        attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
        children = List.copyOf(children);
    }

    private static void checkName(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("not a name of an element or attribute: " + name);
        }
    }

    /** An element with nothing in it. */
    public static Element of(String name) {
        return new Element(name, Map.of(), List.of());
    }

    /** An element that holds only text. */
    public static Element of(String name, String text) {
        return of(name).add(text);
    }

    /** An element that holds these. */
    public static Element of(String name, List<? extends Markup> children) {
        return new Element(name, Map.of(), List.copyOf(children));
    }

    /** The same with one attribute more. */
    public Element with(String attribute, String value) {
        Map<String, String> more = new LinkedHashMap<>(attributes);
        more.put(attribute, value);
        return new Element(name, more, children);
    }

    /** The same with a class of the style sheet. */
    public Element styled(String styleClass) {
        return with("class", styleClass);
    }

    /** The same with more in it. */
    public Element add(Markup... more) {
        return addAll(List.of(more));
    }

    /** The same with text added. */
    public Element add(String text) {
        return text.isEmpty() ? this : add(new Text(text));
    }

    /** The same with all of these added. */
    public Element addAll(List<? extends Markup> more) {
        List<Markup> all = new ArrayList<>(children);
        all.addAll(more);
        return new Element(name, attributes, all);
    }
}
