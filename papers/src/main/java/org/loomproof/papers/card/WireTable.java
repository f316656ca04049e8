package org.loomproof.papers.card;

import org.loomproof.papers.markup.Element;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;

/** Every added wire with both its ends. */
record WireTable(Brief brief, Plan plan, Wording words) {

    Element section() {
        Element section = Element.of("section")
                .styled("wires")
                .add(Element.of("h2", words.of("bench-card.added-wires"))
                        .add(Element.of(
                                "small",
                                words.of("bench-card.wire-count", plan.wires().size()))));
        if (plan.wires().isEmpty()) {
            return section.add(Element.of("p", words.of("bench-card.no-wires")));
        }
        Element body = Element.of("tbody");
        for (AddedWire wire : plan.wires()) {
            body = body.add(Element.of("tr")
                    .add(
                            Element.of("th", wire.id().value()).with("scope", "row"),
                            Parts.cell(words.of("bench-card.from"), words.end(wire.from())),
                            Parts.cell(words.of("bench-card.to-end"), words.end(wire.to())),
                            colour(wire),
                            Parts.cell(words.of("bench-card.size"), words.size(wire.size())),
                            Parts.cell(words.of("bench-card.length"), words.figure(wire.length()))));
        }
        return section.add(Element.of("table")
                .styled("list")
                .add(
                        Parts.tableHead(
                                words.of("bench-card.name"),
                                words.of("bench-card.from"),
                                words.of("bench-card.to-end"),
                                words.of("bench-card.colour"),
                                words.of("bench-card.size"),
                                words.of("bench-card.length")),
                        body));
    }

    private Element colour(AddedWire wire) {
        Element cell = Element.of("td").with("data-title", words.of("bench-card.colour"));
        return wire.lead()
                .map(brief.kit()::lead)
                .flatMap(Lead::colour)
                .map(c -> cell.addAll(Parts.colour(c, words)))
                .orElseGet(() -> cell.add(words.of("bench-card.colour-free")));
    }
}
