package org.loomproof.papers;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads a paper back with the parser of the Java library, which refuses whatever is not well-formed. Hard spaces become plain. */
record Reading(Document document) {

    static Reading of(String paper) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            return new Reading(builder.parse(new InputSource(new StringReader(paper.replace('\u00A0', ' ')))));
        } catch (ParserConfigurationException | IOException e) {
            throw new IllegalStateException(e);
        } catch (SAXException e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    List<Element> elements(String name) {
        var found = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    List<Element> elements(String name, String styleClass) {
        return elements(name).stream()
                .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(styleClass))
                .toList();
    }

    /** The rows of a table without its head. */
    static List<Element> bodyRows(Element table) {
        var bodies = table.getElementsByTagName("tbody");
        var found = ((Element) bodies.item(0)).getElementsByTagName("tr");
        List<Element> rows = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            rows.add((Element) found.item(i));
        }
        return rows;
    }

    String text() {
        return document.getDocumentElement().getTextContent();
    }
}
