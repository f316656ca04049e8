package org.loomproof.papers.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.prover.verdict.Assumption;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;

/** Every assumption of a proof once, numbered in the order in which claims rest on them. */
final class AssumptionList {

    private final Map<Assumption, String> names = new LinkedHashMap<>();

    private AssumptionList() {}

    static AssumptionList of(Proof proof) {
        AssumptionList list = new AssumptionList();
        for (ClaimResult result : proof.results()) {
            for (Assumption assumption : result.restsOn()) {
                list.names.computeIfAbsent(assumption, a -> "A" + (list.names.size() + 1));
            }
        }
        return list;
    }

    boolean isEmpty() {
        return names.isEmpty();
    }

    /** Links from a claim to what it rests on. */
    List<Element> links(List<Assumption> restsOn) {
        return restsOn.stream()
                .map(a -> Element.of("a", name(a))
                        .with("href", "#" + name(a))
                        .with("title", a.figure())
                        .styled("assumption"))
                .toList();
    }

    private String name(Assumption assumption) {
        String name = names.get(assumption);
        if (name == null) {
            throw new IllegalArgumentException("not an assumption of this proof: " + assumption);
        }
        return name;
    }

    Element section(Wording words) {
        Element body = Element.of("tbody");
        for (Assumption a : names.keySet()) {
            body = body.add(Element.of("tr")
                    .with("id", name(a))
                    .add(
                            Element.of("th", name(a)).with("scope", "row"),
                            Parts.cell(words.of("proof-report.figure"), a.figure()),
                            Parts.cell(
                                    words.of("proof-report.taken"), words.of("proof-report.range", a.low(), a.high())),
                            Parts.cell(
                                    words.of("proof-report.settled-by"),
                                    words.of(a.settledBy().what()))));
        }
        return Element.of("section")
                .with("id", "assumptions")
                .add(
                        Element.of("h2", words.of("proof-report.assumptions"))
                                .add(Element.of("small", String.valueOf(names.size()))),
                        Element.of("p", words.of("proof-report.assumptions-mean")),
                        Element.of("table")
                                .styled("list")
                                .add(
                                        Parts.tableHead(
                                                words.of("proof-report.number"),
                                                words.of("proof-report.figure"),
                                                words.of("proof-report.taken"),
                                                words.of("proof-report.settled-by")),
                                        body));
    }
}
