package org.loomproof.papers.card;

import java.util.List;
import java.util.stream.Collectors;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;

/** Every added part, and what goes to each of its terminals. */
record PartTable(Plan plan, Wording words) {

    Element section() {
        Element section = Element.of("section")
                .styled("parts")
                .add(Element.of("h2", words.of("bench-card.parts"))
                        .add(Element.of(
                                "small",
                                words.of("bench-card.part-count", plan.parts().size()))));
        if (plan.parts().isEmpty()) {
            return section.add(Element.of("p", words.of("bench-card.no-parts")));
        }
        Element body = Element.of("tbody");
        for (AddedPart part : plan.parts()) {
            body = body.add(Element.of("tr")
                    .add(
                            Element.of("th", part.id().value()).with("scope", "row"),
                            Parts.cell(words.of("bench-card.part"), words.kind(part)),
                            Parts.cell(words.of("bench-card.look-for"), words.ratings(part)),
                            terminals(part)));
        }
        return section.add(Element.of("table")
                .styled("list")
                .add(
                        Parts.tableHead(
                                words.of("bench-card.name"),
                                words.of("bench-card.part"),
                                words.of("bench-card.look-for"),
                                words.of("bench-card.terminals")),
                        body));
    }

    private Element terminals(AddedPart part) {
        Element list = Element.of("ul").styled("terminals");
        for (String terminal : part.terminals()) {
            End here = new End.OfPart(part.id(), terminal);
            List<AddedWire> wires = plan.wires().stream()
                    .filter(w -> w.from().equals(here) || w.to().equals(here))
                    .toList();
            String goes = wires.isEmpty()
                    ? words.of("bench-card.terminal-free")
                    : wires.stream().map(w -> w.id().value()).collect(Collectors.joining(", "));
            list = list.add(Element.of("li")
                    .add(Element.of("b", words.terminal(terminal)))
                    .add(" " + goes));
        }
        return Element.of("td")
                .with("data-title", words.of("bench-card.terminals"))
                .add(list);
    }
}
