package org.loomproof.papers.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.words.Phrase;

/**
 * The tests of the finished car, each with what must be seen and room for what was; what no test notices with the look that
 * takes its place; and what is at stake.
 */
public final class TestOrderPage {

    /** Effects told of one mishap; the command {@code faults} tells all. */
    private static final int MOST_EFFECTS = 2;

    private static final double SECONDS_A_MINUTE = 60;

    private final Brief brief;
    private final Plan plan;
    private final FaultProof faults;
    private final Wording words;

    private TestOrderPage(Brief brief, Plan plan, FaultProof faults, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.faults = faults;
        this.words = words;
    }

    /** The test order as a page. */
    public static Page page(Brief brief, Plan plan, FaultProof faults, Wording words) {
        return new TestOrderPage(brief, plan, faults, words).page();
    }

    private Page page() {
        List<Markup> content = new ArrayList<>();
        content.add(Parts.heading(words.of("test-order.title"), brief, words).add(Parts.signature(words)));
        content.add(Element.of("p", words.of("test-order.begin")).styled("joints"));
        List<Phrase> cautions = new ArrayList<>();
        if (faults.left() > 0) {
            cautions.add(Phrase.of("test-order.unfinished", faults.left()));
        }
        cautions.add(Phrase.of("test-order.stand-clear"));
        if (faults.testOrder().tests().stream().anyMatch(test -> test.kind() == HandTest.Kind.BATTERY_OFF)) {
            cautions.add(Phrase.of("test-order.battery-off"));
        }
        content.add(Parts.cautions(words.of("test-order.cautions"), cautions, words));
        for (HandTest.Kind kind : HandTest.Kind.inOrder()) {
            tests(kind, content);
        }
        inspections(content);
        worst(content);
        content.add(search());
        return Page.of(words.of("test-order.title"), brief, "test-order", content, words);
    }

    private void tests(HandTest.Kind kind, List<Markup> content) {
        List<Element> rows = new ArrayList<>();
        for (int t = 0; t < faults.testOrder().tests().size(); t++) {
            if (faults.testOrder().tests().get(t).kind() == kind) {
                rows.add(row(t));
            }
        }
        if (!rows.isEmpty()) {
            content.add(Element.of("section")
                    .styled("tests")
                    .add(
                            Element.of("h2", words.of("test-order.kind." + kind.word())),
                            Element.of("table")
                                    .styled("visits")
                                    .add(
                                            Parts.tableHead(
                                                    words.of("test-order.passed"),
                                                    words.of("test-order.number"),
                                                    words.of("test-order.do"),
                                                    words.of("test-order.expected")),
                                            Element.of("tbody", rows))));
        }
    }

    private Element row(int place) {
        HandTest test = faults.testOrder().tests().get(place);
        Element work = Element.of("td")
                .styled("work")
                .add(Element.of("p")
                        .styled("headline")
                        .add(Element.of(
                                "strong",
                                words.of("test-order.from." + test.from().word()))));
        for (Phrase step : test.steps()) {
            work = work.add(Element.of("p", words.of(step)));
        }
        Element seen = Element.of("td").styled("measured");
        for (String line : new Expected(brief, plan, faults, words).lines(place)) {
            seen = seen.add(Element.of("p", line).styled("write-in reading"));
        }
        return Element.of("tr")
                .add(
                        Parts.tick(words.of("test-order.tick", place + 1)),
                        Element.of("th", String.valueOf(place + 1)).with("scope", "row"),
                        work,
                        seen);
    }

    /** A look for each mishap that no test notices and that would matter. */
    private void inspections(List<Markup> content) {
        Map<String, List<String>> looks = new LinkedHashMap<>();
        for (int k = 0; k < faults.results().size(); k++) {
            MishapResult result = faults.results().get(k);
            if (!faults.isNoticed(k) && result.severity() != Severity.NONE) {
                looks.computeIfAbsent(words.of(faults.inspection(k)), look -> new ArrayList<>())
                        .add(words.of(result.mishap().words()));
            }
        }
        if (looks.isEmpty()) {
            return;
        }
        Element body = Element.of("tbody");
        for (Map.Entry<String, List<String>> look : looks.entrySet()) {
            body = body.add(Element.of("tr")
                    .add(
                            Parts.tick(look.getKey()),
                            Parts.cell(words.of("test-order.look"), look.getKey()),
                            Parts.cell(words.of("test-order.would-miss"), String.join("; ", look.getValue()))));
        }
        content.add(Element.of("section")
                .add(
                        Element.of("h2", words.of("test-order.looks")),
                        Element.of("table")
                                .styled("list looks")
                                .add(
                                        Parts.tableHead(
                                                words.of("bench-card.done"),
                                                words.of("test-order.look"),
                                                words.of("test-order.would-miss")),
                                        body)));
    }

    private void worst(List<Markup> content) {
        for (Severity severity : List.of(Severity.FIRE_OR_LOSS_OF_CONTROL, Severity.STRANDED)) {
            FaultProof.Coverage coverage = faults.coverage(severity);
            if (coverage.all() > 0) {
                content.add(Element.of("section")
                        .add(
                                Element.of("h2", words.of("test-order.worst." + severity.word()))
                                        .add(Element.of(
                                                "small",
                                                words.of("test-order.coverage", coverage.noticed(), coverage.all()))),
                                Element.of("table")
                                        .styled("list stakes")
                                        .add(
                                                Parts.tableHead(
                                                        words.of("test-order.wrong"),
                                                        words.of("test-order.comes-to"),
                                                        words.of("test-order.noticed-by")),
                                                stakes(severity))));
            }
        }
    }

    /** One row for all mishaps that come to the same and are noticed by the same test. */
    private Element stakes(Severity severity) {
        Map<List<String>, List<String>> wrong = new LinkedHashMap<>();
        for (int k = 0; k < faults.results().size(); k++) {
            MishapResult result = faults.results().get(k);
            if (result.severity() == severity) {
                wrong.computeIfAbsent(List.of(comesTo(result), noticedBy(k)), each -> new ArrayList<>())
                        .add(words.of(result.mishap().words()));
            }
        }
        Element body = Element.of("tbody");
        for (Map.Entry<List<String>, List<String>> row : wrong.entrySet()) {
            body = body.add(Element.of("tr")
                    .add(
                            Element.of("td")
                                    .with("data-title", words.of("test-order.wrong"))
                                    .add(Parts.sentences("mishaps", row.getValue())),
                            Parts.cell(
                                    words.of("test-order.comes-to"),
                                    row.getKey().getFirst()),
                            Parts.cell(
                                    words.of("test-order.noticed-by"),
                                    row.getKey().getLast())));
        }
        return body;
    }

    private String comesTo(MishapResult result) {
        List<String> effects = result.effects().stream()
                .limit(MOST_EFFECTS)
                .map(words::of)
                .collect(Collectors.toCollection(ArrayList::new));
        if (result.effects().size() > MOST_EFFECTS) {
            effects.add(words.of("faults.more", result.effects().size() - MOST_EFFECTS));
        }
        return String.join("; ", effects);
    }

    private String noticedBy(int place) {
        List<Integer> by = faults.testOrder().noticedBy().get(place);
        return by.isEmpty() ? words.of(faults.inspection(place)) : words.of("test-order.by-test", by.getFirst() + 1);
    }

    private Element search() {
        FaultProof.Coverage coverage = faults.coverage();
        List<String> said = new ArrayList<>();
        said.add(words.of("faults.coverage", coverage.noticed(), coverage.all(), coverage.percent()));
        said.add(words.of("test-order.takes", faults.testOrder().seconds() / SECONDS_A_MINUTE));
        if (faults.testOrder().gap() > 0) {
            said.add(words.of("faults.gap", faults.testOrder().gap()));
        }
        faults.bounds().forEach(bound -> said.add(words.of("faults.bound", bound)));
        return Element.of("section")
                .add(Element.of("h2", words.of("test-order.search")), Parts.sentences("points", said));
    }
}
