package org.loomproof.papers.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.MarkupReader;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.markup.Text;
import org.loomproof.workshop.brief.Brief;

/**
 * One page, before it is known whether it goes to a screen or to a printer.
 *
 * @param language of its words
 * @param title for the window and the heading of the print
 * @param bodyClass a class of the style sheet for the whole
 * @param content what stands on it
 */
public record Page(Locale language, String title, String bodyClass, List<Markup> content) {

    public Page {
        content = List.copyOf(content);
    }

    /**
     * A page of one job's papers.
     *
     * @param name what the page is called
     */
    public static Page of(String name, Brief brief, String bodyClass, List<Markup> content, Wording words) {
        String title = words.of("page.title", name, brief.order().job());
        return new Page(words.messages().locale().stripExtensions(), title, bodyClass, content);
    }

    /**
     * A page from the file that {@link #html} made of it, to be printed later.
     *
     * @throws IllegalArgumentException when it is no such file
     */
    public static Page read(String html) {
        Element root = MarkupReader.read(html);
        Element head = child(root, "head");
        Element body = child(root, "body");
        return new Page(
                Locale.forLanguageTag(root.attributes().getOrDefault("lang", "")),
                child(head, "title").children().stream()
                        .map(Text.class::cast)
                        .map(Text::value)
                        .collect(Collectors.joining()),
                body.attributes().getOrDefault("class", ""),
                child(body, "main").children());
    }

    /** The same with every element changed, what stands in it before itself. */
    public Page changed(UnaryOperator<Element> change) {
        return with(changed(content, change));
    }

    /** The same with something else on it. */
    public Page with(List<Markup> other) {
        return new Page(language, title, bodyClass, other);
    }

    private static List<Markup> changed(List<Markup> content, UnaryOperator<Element> change) {
        return content.stream()
                .<Markup>map(markup -> switch (markup) {
                    case Text text -> text;
                    case Element element ->
                        change.apply(
                                new Element(element.name(), element.attributes(), changed(element.children(), change)));
                })
                .toList();
    }

    private static Element child(Element parent, String name) {
        return parent.children().stream()
                .filter(Element.class::isInstance)
                .map(Element.class::cast)
                .filter(element -> element.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + name + " in " + parent.name()));
    }

    /** The page as a file for a browser: nothing fetched from anywhere, nothing that runs. */
    public String html() {
        Element head = Element.of("head")
                .add(
                        Element.of("meta").with("charset", "UTF-8"),
                        Element.of("meta")
                                .with("http-equiv", "Content-Security-Policy")
                                .with("content", "default-src 'none'; style-src 'unsafe-inline'; img-src data:"),
                        Element.of("meta")
                                .with("name", "viewport")
                                .with("content", "width=device-width, initial-scale=1"),
                        Element.of("meta").with("name", "color-scheme").with("content", "light dark"),
                        Element.of("title", title),
                        Element.of("style", styleSheet()));
        return MarkupWriter.html(Element.of("html")
                .with("xmlns", "http://www.w3.org/1999/xhtml")
                .with("lang", language.toLanguageTag())
                .add(
                        head,
                        Element.of("body")
                                .styled(bodyClass)
                                .add(Element.of("main").addAll(content))));
    }

    private static String styleSheet() {
        try (InputStream in = Page.class.getResourceAsStream("page.css")) {
            if (in == null) {
                throw new IllegalStateException("page.css is missing from the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("page.css cannot be read", e);
        }
    }
}
