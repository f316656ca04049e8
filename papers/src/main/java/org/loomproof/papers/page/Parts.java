package org.loomproof.papers.page;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.Text;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.trade.colour.WireColour;
import org.loomproof.workshop.words.Phrase;

/** The pieces that more than one page is built from. */
public final class Parts {

    /** What holds for every job: who has the last word, and what must be safe first. */
    private static final List<String> STANDING_CAUTIONS = List.of(
            "caution.maker-law-licence",
            "caution.battery-negative-off",
            "caution.restraints",
            "caution.high-voltage",
            "standing-caution.measure");

    private Parts() {}

    /** The title of a page, and whose job it is. */
    public static Element heading(String title, Brief brief, Wording words) {
        return Element.of("header")
                .add(
                        Element.of("p", words.of("page.job")).styled("over"),
                        Element.of("h1", title),
                        Element.of("dl")
                                .styled("facts")
                                .add(
                                        pair(
                                                words.of("page.job-name"),
                                                brief.order().job()),
                                        pair(
                                                words.of("page.vehicle"),
                                                brief.sheet().vehicle().name()),
                                        pair(words.of("page.kit"), brief.kit().name())));
    }

    /** A term and what is said of it, kept together. */
    public static Element pair(String term, String said) {
        return Element.of("div").addAll(fact(term, said));
    }

    /** A term and what is said of it. */
    public static List<Element> fact(String term, String said) {
        return List.of(Element.of("dt", term), Element.of("dd", said));
    }

    /** The box of cautions: those of the plan, then those of every job that the plan does not give already. */
    public static Element cautions(String title, List<Phrase> ofThePlan, Wording words) {
        Set<String> cautions = new LinkedHashSet<>();
        ofThePlan.forEach(caution -> cautions.add(words.of(caution)));
        STANDING_CAUTIONS.forEach(key -> cautions.add(words.of(key)));
        Element list =
                Element.of("ul", cautions.stream().map(c -> Element.of("li", c)).toList());
        return Element.of("section")
                .styled("cautions")
                .add(Element.of("h2").add(Mark.CAUTION.drawn(), new Text(title)), list);
    }

    /** A colour as swatch and letters. */
    public static List<Markup> colour(WireColour colour, Wording words) {
        Element letters = Element.of("span", colour.letters()).styled("letters");
        return colour.shade().isEmpty()
                ? List.of(Insulation.swatch(colour), letters)
                : List.of(
                        Insulation.swatch(colour),
                        letters,
                        Element.of("span", words.of("shade." + colour.shade())).styled("shade"));
    }

    /** The head of a table. */
    public static Element tableHead(String... titles) {
        Element row = Element.of("tr");
        for (String title : titles) {
            row = row.add(Element.of("th", title).with("scope", "col"));
        }
        return Element.of("thead").add(row);
    }

    /** A cell that says its column's title where there is no room for columns. */
    public static Element cell(String title, String text) {
        return Element.of("td", text).with("data-title", title);
    }

    /** A cell with a box to tick; the label is for those who cannot see what stands beside it. */
    public static Element tick(String label) {
        return Element.of("td")
                .styled("tick")
                .add(Element.of("input").with("type", "checkbox").with("aria-label", label));
    }

    /** Room for whose work it is: the vehicle's number, a name, a day. */
    public static Element signature(Wording words) {
        return blanks(Stream.of("bench-card.vehicle-number", "bench-card.technician", "bench-card.date")
                .map(words::of)
                .toList());
    }

    /** Lines to be written on in one row, with what each is for. */
    public static Element blanks(List<String> fields) {
        return Element.of("div", fields.stream().map(f -> Element.of("span", f)).toList())
                .styled("signature");
    }

    /** A list of sentences, small. */
    public static Element sentences(String styleClass, List<String> sentences) {
        return Element.of("ul", sentences.stream().map(s -> Element.of("li", s)).toList())
                .styled(styleClass);
    }

    /** Drawings one below the other, each on a sheet of its own in print. */
    public static Element drawings(String id, String title, List<Element> drawings) {
        Element section =
                Element.of("section").styled("drawings").with("id", id).add(Element.of("h2", title));
        for (Element drawing : drawings) {
            section = section.add(Element.of("figure")
                    .with("tabindex", "0")
                    .with("role", "group")
                    .with("aria-label", title)
                    .add(drawing));
        }
        return section;
    }
}
