package org.loomproof.cli.report;

import java.util.stream.Collectors;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.ThreatResult;
import org.loomproof.workshop.words.Messages;

/** What is reported beside the claims: what is left although they hold, and what a thief may try, one entry each: what comes of it, what is done, and the steps that show it. */
final class BesideTable {

    private final Messages messages;

    BesideTable(Messages messages) {
        this.messages = messages;
    }

    void add(Lines lines, Proof proof) {
        if (!proof.residuals().isEmpty()) {
            lines.gap().wrap(messages.text("report.residuals"), "  ");
            proof.residuals().forEach(left -> lines.wrap("  " + messages.text(left.what()), "    "));
        }
        if (proof.threats().isEmpty()) {
            return;
        }
        lines.gap().wrap(messages.text("report.threats"), "  ");
        proof.threats().forEach(result -> lines.wrap("  " + entry(result), "    "));
        lines.gap();
    }

    private String entry(ThreatResult result) {
        String done = messages.text(
                "report.threat", messages.text("threat." + result.outcome().word()), result.deed(), result.load());
        String steps = result.steps().stream().map(messages::text).collect(Collectors.joining("; "));
        return steps.isEmpty() ? done : messages.text("report.threat-steps", done, steps);
    }
}
