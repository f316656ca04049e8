package org.loomproof.papers.markup;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads back what {@link MarkupWriter} wrote: the same tree, except that texts beside each other are one. Nothing is fetched. */
public final class MarkupReader extends DefaultHandler {

    /** An element whose end has not come yet. */
    private record Begun(String name, Map<String, String> attributes, List<Markup> children) {}

    private final Deque<Begun> begun = new ArrayDeque<>();
    private final StringBuilder text = new StringBuilder();

    private MarkupReader() {
        begun.push(new Begun("whole", Map.of(), new ArrayList<>()));
    }

    /**
     * The tree of a whole page or drawing.
     *
     * @throws IllegalArgumentException when it is none that was written by us
     */
    public static Element read(String document) {
        MarkupReader reader = new MarkupReader();
        try {
            SAXParserFactory parsers = SAXParserFactory.newInstance();
            parsers.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            parsers.setFeature("http://xml.org/sax/features/external-general-entities", false);
            parsers.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            parsers.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            parsers.newSAXParser().parse(new InputSource(new StringReader(document)), reader);
        } catch (SAXException e) {
            throw new IllegalArgumentException("not a page of ours", e);
        } catch (ParserConfigurationException | IOException e) {
            throw new IllegalStateException("every Java reads text as XML", e);
        }
        return (Element) reader.begun.element().children().getFirst();
    }

    @Override
    public void startElement(String uri, String localName, String name, Attributes attributes) {
        endText();
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 0; i < attributes.getLength(); i++) {
            values.put(attributes.getQName(i), attributes.getValue(i));
        }
        begun.push(new Begun(name, values, new ArrayList<>()));
    }

    @Override
    public void endElement(String uri, String localName, String name) {
        endText();
        Begun ended = begun.pop();
        begun.element().children().add(new Element(ended.name(), ended.attributes(), ended.children()));
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        text.append(characters, start, length);
    }

    private void endText() {
        List<Markup> before = begun.element().children();
        boolean isAfterLineEnd = !before.isEmpty()
                && before.getLast() instanceof Element element
                && MarkupWriter.LINE_ENDS.contains(element.name());
        String found = isAfterLineEnd && !text.isEmpty() ? text.substring(1) : text.toString();
        if (!found.isEmpty()) {
            before.add(new Text(found));
        }
        text.setLength(0);
    }
}
