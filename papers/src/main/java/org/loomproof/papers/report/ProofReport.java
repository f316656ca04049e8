package org.loomproof.papers.report;

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
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Residual;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Phrase;

/**
 * What was found of a plan, what is not to be done first: refusals, leads that wait, then the claims, broken ones before
 * open ones before those with a declared change, and those before what holds.
 */
public final class ProofReport {

    private final Brief brief;
    private final Plan plan;
    private final Proof proof;
    private final Wording words;
    private final AssumptionList assumptions;
    private final Tally tally;

    private ProofReport(Brief brief, Plan plan, Proof proof, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.proof = proof;
        this.words = words;
        this.assumptions = AssumptionList.of(proof);
        this.tally = Tally.of(plan, proof);
    }

    /** The report as a page, with the drawings in it. */
    public static Page page(Brief brief, Plan plan, Proof proof, List<Element> drawings, Wording words) {
        return new ProofReport(brief, plan, proof, words).page(drawings);
    }

    private Page page(List<Element> drawings) {
        List<Markup> content = new ArrayList<>();
        content.add(Parts.heading(words.of("proof-report.title"), brief, words));
        content.add(summary());
        addRefusals(content);
        addHolds(content);
        content.add(Parts.cautions(words.of("proof-report.cautions"), plan.cautions(), words));
        ClaimEntry entries = new ClaimEntry(brief, assumptions, words);
        addClaims(content, Mark.BROKEN, listResults(Verdict.Broken.class), entries);
        addClaims(content, Mark.OPEN, listResults(Verdict.Open.class), entries);
        addClaims(content, Mark.DECLARED, listResults(Verdict.Declared.class), entries);
        addClaims(content, Mark.HOLDS, listResults(Verdict.Holds.class), entries);
        addResiduals(content);
        ThreatList threats = new ThreatList(proof.threats());
        if (!threats.isEmpty()) {
            content.add(threats.section(words));
        }
        if (!assumptions.isEmpty()) {
            content.add(assumptions.section(words));
        }
        content.add(effort());
        if (!drawings.isEmpty()) {
            content.add(Parts.drawings("schematic", words.of("schematic.title"), drawings));
        }
        return Page.of(words.of("proof-report.title"), brief, "report", content, words);
    }

    private void addResiduals(List<Markup> content) {
        if (!proof.residuals().isEmpty()) {
            Element section = section(
                    Mark.CAUTION,
                    "residuals",
                    "proof-report.residuals",
                    proof.residuals().size());
            Element list = Element.of("ul");
            for (Residual residual : proof.residuals()) {
                list = list.add(Element.of("li", words.of(residual.what())));
            }
            content.add(section.add(list));
        }
    }

    private List<ClaimResult> listResults(Class<? extends Verdict> verdict) {
        return proof.results().stream()
                .filter(r -> verdict.isInstance(r.verdict()))
                .toList();
    }

    private Element summary() {
        Element tiles = Element.of("ul").styled("tiles");
        tiles = tiles.add(tile(Mark.HOLDS, tally.holding(), "proof-report.holds", "#holds"));
        tiles = tiles.add(tile(Mark.BROKEN, tally.broken(), "proof-report.broken", "#broken"));
        tiles = tiles.add(tile(Mark.OPEN, tally.open(), "proof-report.open", "#open"));
        if (tally.declared() > 0) {
            tiles = tiles.add(tile(Mark.DECLARED, tally.declared(), "proof-report.declared", "#declared"));
        }
        tiles = tiles.add(tile(Mark.REFUSED, tally.refused(), "proof-report.refused", "#refused"));
        tiles = tiles.add(tile(Mark.WAITING, tally.waiting(), "proof-report.waiting", "#waiting"));
        return Element.of("section")
                .styled("summary " + tally.mark().styleClass())
                .add(
                        Element.of("p").styled("answer").add(tally.mark().drawn(), new Text(words.of(tally.answer()))),
                        tiles);
    }

    private Element tile(Mark mark, int count, String key, String target) {
        Element inner = Element.of(count > 0 ? "a" : "span");
        if (count > 0) {
            inner = inner.with("href", target);
        }
        return Element.of("li")
                .styled(count > 0 ? mark.styleClass() : "is-none")
                .add(inner.add(
                        mark.drawn(), Element.of("b", String.valueOf(count)), Element.of("span", words.of(key))));
    }

    private void addRefusals(List<Markup> content) {
        if (plan.refusals().isEmpty()) {
            return;
        }
        Element section = section(
                Mark.REFUSED,
                "refused",
                "proof-report.refusals",
                plan.refusals().size());
        for (Refusal refusal : plan.refusals()) {
            section = section.add(entry(Mark.REFUSED, words.wish(refusal.wish()))
                    .add(
                            Element.of("p", words.of(refusal.because())),
                            labelled("proof-report.possible-if", words.of(refusal.possibleIf()))));
        }
        content.add(section);
    }

    private void addHolds(List<Markup> content) {
        List<Hookup.Hold> holds = plan.hookups().stream()
                .filter(Hookup.Hold.class::isInstance)
                .map(Hookup.Hold.class::cast)
                .toList();
        if (holds.isEmpty()) {
            return;
        }
        Element section = section(Mark.WAITING, "waiting", "proof-report.holds-of-leads", holds.size());
        for (Hookup.Hold hold : holds) {
            String lead = words.of(
                    "proof-report.waiting-lead",
                    hold.lead().value(),
                    words.role(brief.kit().lead(hold.lead()).role()),
                    words.wish(hold.serves()));
            section = section.add(entry(Mark.WAITING, lead)
                    .add(
                            Element.of("p", words.of(hold.because())),
                            labelled(
                                    "proof-report.measure",
                                    words.of(hold.until().what()))));
        }
        content.add(section);
    }

    private void addClaims(List<Markup> content, Mark mark, List<ClaimResult> results, ClaimEntry entries) {
        if (results.isEmpty()) {
            return;
        }
        String id = switch (mark) {
            case BROKEN -> "broken";
            case OPEN -> "open";
            case DECLARED -> "declared";
            case HOLDS -> "holds";
            case REFUSED, WAITING, CAUTION -> throw new IllegalArgumentException(mark + " is not of a claim");
        };
        Element section = section(mark, id, "proof-report.claims-" + id, results.size());
        for (ClaimResult result : results) {
            section = section.add(entries.of(result, entry(mark, words.of(result.statement()))));
        }
        content.add(section);
    }

    private Element section(Mark mark, String id, String key, int count) {
        return Element.of("section")
                .with("id", id)
                .styled("entries " + mark.styleClass())
                .add(Element.of("h2", words.of(key)).add(Element.of("small", String.valueOf(count))));
    }

    private Element entry(Mark mark, String title) {
        return Element.of("article")
                .styled("entry")
                .add(Element.of("h3")
                        .add(
                                mark.drawn(),
                                Element.of("span", words.of("mark." + mark.styleClass()))
                                        .styled("word"),
                                new Text(title)));
    }

    private Element labelled(String key, String text) {
        return Element.of("p").add(Element.of("b", words.of(key)), new Text(" " + text));
    }

    private Element effort() {
        Element section = Element.of("section")
                .styled("effort")
                .add(
                        Element.of("h2", words.of("proof-report.effort")),
                        Element.of(
                                "p",
                                words.of(
                                        "proof-report.effort-counts",
                                        proof.effort().situations(),
                                        proof.effort().solves(),
                                        proof.effort().corners(),
                                        proof.effort().modes(),
                                        proof.effort().transitions(),
                                        proof.effort().reached().states(),
                                        proof.effort().reached().transitions(),
                                        proof.effort().reached().standFor())));
        if (proof.bounds().isEmpty()) {
            return section.add(Element.of("p", words.of("proof-report.no-bounds")));
        }
        Element list = Element.of("ul");
        for (Phrase bound : proof.bounds()) {
            list = list.add(Element.of("li", words.of(bound)));
        }
        return section.add(Element.of("p", words.of("proof-report.bounds")), list);
    }
}
