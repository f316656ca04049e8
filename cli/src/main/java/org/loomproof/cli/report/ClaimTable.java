package org.loomproof.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.words.Messages;

/** The verdicts: what holds in one line for the kinds of claim that are called alike, what is broken, declared or open each in full. */
final class ClaimTable {

    private final Messages messages;

    ClaimTable(Messages messages) {
        this.messages = messages;
    }

    void add(Lines lines, Proof proof) {
        lines.cut(messages.text(
                "report.proof",
                proof.effort().situations(),
                proof.effort().solves() + proof.effort().reached().solves(),
                proof.effort().modes(),
                proof.effort().reached().states()));
        kinds(proof).forEach((kind, results) -> addHolding(lines, kind, results));
        proof.results().forEach(result -> addTrouble(lines, result));
    }

    /** By what the kind of claim is called. */
    private Map<String, List<ClaimResult>> kinds(Proof proof) {
        Map<String, List<ClaimResult>> kinds = new LinkedHashMap<>();
        for (ClaimResult result : proof.results()) {
            String kind = messages.text("claim-kind." + result.id().split(" ", 2)[0]);
            kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(result);
        }
        return kinds;
    }

    private void addHolding(Lines lines, String kind, List<ClaimResult> results) {
        List<Margin> margins = results.stream()
                .map(ClaimResult::verdict)
                .filter(Verdict.Holds.class::isInstance)
                .map(verdict -> ((Verdict.Holds) verdict).tightest())
                .toList();
        if (margins.isEmpty()) {
            return;
        }
        lines.cut("  "
                + Lines.column(messages.text("verdict.holds"), 7)
                + Lines.column(Integer.toString(margins.size()), 4)
                + Lines.column(kind, 38)
                + messages.text("report.to-spare", toSpare(margins)));
    }

    /** The least of each unit, in the order in which the units come. */
    private static String toSpare(List<Margin> margins) {
        Map<String, Double> least = new LinkedHashMap<>();
        margins.forEach(margin -> least.merge(margin.unit(), margin.slack(), Math::min));
        return least.entrySet().stream()
                .map(each -> Figures.withUnit(each.getValue(), each.getKey()))
                .collect(Collectors.joining(", "));
    }

    private void addTrouble(Lines lines, ClaimResult result) {
        switch (result.verdict()) {
            case Verdict.Holds ignored -> {}
            case Verdict.Broken broken -> {
                lines.wrap(
                        "  "
                                + messages.text(
                                        "report.broken",
                                        result.statement(),
                                        broken.worst().computed(),
                                        broken.worst().allowed()),
                        "    ");
                addWitness(lines, broken.witness());
            }
            case Verdict.Declared declared -> {
                lines.wrap("  " + messages.text("report.declared", result.statement(), declared.found()), "    ");
                lines.wrap(
                        "    "
                                + messages.text(
                                        "report.declared-told",
                                        declared.change().told()),
                        "      ");
                addWitness(lines, declared.witness());
            }
            case Verdict.Open open -> {
                lines.wrap("  " + messages.text("report.open", result.statement(), open.because()), "    ");
                open.settledBy()
                        .forEach(m -> lines.wrap("    " + messages.text("report.settled-by", m.what()), "      "));
            }
        }
    }

    private void addWitness(Lines lines, Witness witness) {
        int number = 1;
        for (var step : witness.steps()) {
            lines.wrap("    " + number++ + ". " + messages.text(step), "       ");
        }
        witness.seen().forEach(o -> lines.wrap("    " + messages.text("report.seen", o.at(), o.reads()), "      "));
    }
}
