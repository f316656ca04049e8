package org.loomproof.papers.letter;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.Text;
import org.loomproof.papers.page.Mark;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;

/** A letter as a page. */
final class LetterPage {

    private LetterPage() {}

    static Page of(Letter letter, Brief brief, Wording words) {
        List<Markup> content = new ArrayList<>();
        content.add(Parts.heading(letter.title(), brief, words));
        letter.blocks().forEach(block -> content.add(section(block)));
        return Page.of(letter.title(), brief, "letter", content, words);
    }

    private static Element section(Letter.Block block) {
        return switch (block) {
            case Letter.Block.Points(var heading, var points) ->
                headed(Element.of("section"), heading).add(Parts.sentences("points", points));
            case Letter.Block.Signed(var heading, var points, var fields) ->
                headed(Element.of("section"), heading).add(Parts.sentences("points", points), Parts.blanks(fields));
            case Letter.Block.Beware(var heading, var points) ->
                Element.of("section")
                        .styled("cautions")
                        .add(Element.of("h2").add(Mark.CAUTION.drawn(), new Text(heading)))
                        .add(Parts.sentences("points", points));
            case Letter.Block.Sums(var heading, var rows) ->
                headed(Element.of("section"), heading).add(table(rows));
        };
    }

    private static Element headed(Element section, String heading) {
        return heading.isEmpty() ? section : section.add(Element.of("h2", heading));
    }

    private static Element table(List<Letter.Row> rows) {
        Element body = Element.of("tbody");
        for (Letter.Row row : rows) {
            body = body.add(Element.of("tr")
                    .styled(row.strong() ? "total" : "line")
                    .add(
                            Element.of("th", row.what()).with("scope", "row"),
                            Element.of("td", row.amount()).styled("amount")));
        }
        return Element.of("table").styled("sums").add(body);
    }
}
