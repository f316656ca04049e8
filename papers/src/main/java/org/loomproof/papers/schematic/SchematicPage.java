package org.loomproof.papers.schematic;

import java.util.List;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;

/** The schematic and the details of its couplings as a page of their own. */
public final class SchematicPage {

    private static final List<String> HOW_TO_READ =
            List.of("wires", "joints", "cuts", "relays", "parts", "details", "assumed");

    private SchematicPage() {}

    /**
     * The page.
     *
     * @param drawings the schematic, sheet by sheet
     * @param details the couplings, sheet by sheet
     */
    public static Page of(Brief brief, List<Element> drawings, List<Element> details, Wording words) {
        List<String> howTo = HOW_TO_READ.stream()
                .map(each -> words.of("schematic.read." + each))
                .toList();
        return Page.of(
                words.of("schematic.title"),
                brief,
                "schematic",
                List.of(
                        Parts.heading(words.of("schematic.title"), brief, words),
                        Parts.cautions(words.of("bench-card.cautions"), List.of(), words),
                        Element.of("section")
                                .add(
                                        Element.of("h2", words.of("schematic.how-to-read")),
                                        Parts.sentences("points", howTo)),
                        Parts.drawings("schematic", words.of("schematic.title"), drawings),
                        Parts.drawings("details", words.of("schematic.details"), details)),
                words);
    }
}
