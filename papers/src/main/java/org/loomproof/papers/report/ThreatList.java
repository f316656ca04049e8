package org.loomproof.papers.report;

import java.util.List;
import java.util.stream.Collectors;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.prover.verdict.ThreatResult;

/** What a thief may try, and what comes of each. */
record ThreatList(List<ThreatResult> threats) {

    boolean isEmpty() {
        return threats.isEmpty();
    }

    Element section(Wording words) {
        Element body = Element.of("tbody");
        for (ThreatResult threat : threats) {
            body = body.add(Element.of("tr")
                    .add(
                            Parts.cell(words.of("proof-report.threat"), words.of(threat.deed())),
                            Parts.cell(words.of("proof-report.comes-of-it"), outcome(threat, words)),
                            Parts.cell(words.of("proof-report.to-see-it"), steps(threat, words))));
        }
        return Element.of("section")
                .with("id", "threats")
                .add(
                        Element.of("h2", words.of("proof-report.threats"))
                                .add(Element.of("small", String.valueOf(threats.size()))),
                        Element.of("p", words.of("proof-report.threats-mean")),
                        Element.of("table")
                                .styled("list")
                                .add(
                                        Parts.tableHead(
                                                words.of("proof-report.threat"),
                                                words.of("proof-report.comes-of-it"),
                                                words.of("proof-report.to-see-it")),
                                        body));
    }

    private static String outcome(ThreatResult threat, Wording words) {
        return words.of(
                "proof-report.outcome",
                words.of(threat.load()),
                words.of("threat." + threat.outcome().word()));
    }

    private static String steps(ThreatResult threat, Wording words) {
        return threat.steps().stream().map(words::of).collect(Collectors.joining("; "));
    }
}
