package org.loomproof.papers.report;

import java.util.List;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Text;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.words.Phrase;

/** One claim: its verdict with what decided it, and what it rests on. */
record ClaimEntry(Brief brief, AssumptionList assumptions, Wording words) {

    Element of(ClaimResult result, Element entry) {
        Element whole = switch (result.verdict()) {
            case Verdict.Holds v ->
                entry.add(margin(v.tightest(), "proof-report.to-spare")
                        .add(pair("proof-report.deciding", words.situation(v.deciding(), brief.sheet()))));
            case Verdict.Broken v -> entry.add(margin(v.worst(), "proof-report.short-by"), witness(v.witness()));
            case Verdict.Declared v -> entry.add(declared(v), witness(v.witness()));
            case Verdict.Open v -> open(entry, v);
        };
        if (!result.restsOn().isEmpty()) {
            Element rests = Element.of("p").styled("rests-on").add(Element.of("b", words.of("proof-report.rests-on")));
            for (Element link : assumptions.links(result.restsOn())) {
                rests = rests.add(new Text(" "), link);
            }
            whole = whole.add(rests);
        }
        return whole.add(Element.of("p", result.id()).styled("claim-id"));
    }

    private Element margin(Margin margin, String slackKey) {
        String slack = Figures.withUnit(Math.abs(margin.slack()), margin.unit());
        return Element.of("dl")
                .styled("margin")
                .add(
                        pair("proof-report.computed", words.of(margin.computed())),
                        pair("proof-report.allowed", words.of(margin.allowed())),
                        pair(slackKey, slack.replace(' ', '\u00A0')));
    }

    private Element declared(Verdict.Declared declared) {
        return Element.of("dl")
                .styled("margin")
                .add(
                        pair("proof-report.computed", words.of(declared.found())),
                        pair("proof-report.told", declared.change().told()),
                        pair("proof-report.wanted-because", declared.change().because()));
    }

    private Element pair(String key, String said) {
        return Parts.pair(words.of(key), said);
    }

    private Element witness(Witness witness) {
        Element steps = Element.of("ol");
        for (Phrase step : witness.steps()) {
            steps = steps.add(Element.of("li", words.of(step)));
        }
        Element seen = Element.of("ul").styled("seen");
        for (Observation observation : witness.seen()) {
            seen = seen.add(Element.of("li")
                    .add(
                            new Text(words.of(observation.at()) + " "),
                            Element.of("b", observation.reads().replace(' ', '\u00A0'))));
        }
        return Element.of("div")
                .styled("witness")
                .add(
                        Element.of("h4", words.of("proof-report.witness")),
                        steps,
                        Element.of("h4", words.of("proof-report.seen")),
                        seen,
                        Element.of(
                                        "p",
                                        words.of(
                                                "proof-report.situation",
                                                words.situation(witness.situation(), brief.sheet())))
                                .styled("situation"));
    }

    private Element open(Element entry, Verdict.Open open) {
        Element whole = entry.add(Element.of("p", words.of(open.because())));
        List<Measurement> settledBy = open.settledBy();
        if (settledBy.isEmpty()) {
            return whole;
        }
        Element list = Element.of("ul").styled("settled-by");
        for (Measurement measurement : settledBy) {
            list = list.add(Element.of("li", words.of(measurement.what())));
        }
        return whole.add(Element.of("h4", words.of("proof-report.settles-it")), list);
    }
}
