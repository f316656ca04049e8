package org.loomproof.cli.report;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomproof.shop.job.Answer;
import org.loomproof.shop.job.VerdictCounts;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.weigh.Search;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** A planned and proven job, or a proof made again, as lines for a terminal. */
public final class JobReport {

    private final Messages messages;

    /** Words come from these messages. */
    public JobReport(Messages messages) {
        this.messages = messages;
    }

    /**
     * The report without its closing lines: leads, parts, refusals, verdicts. The bounds of the proof and what is
     * reported beside the claims are told in full where no proof report was written, else in that report.
     */
    public List<String> body(Brief brief, Plan plan, Proof proof, Search search, Optional<Path> proofReport) {
        Lines lines = new Lines();
        lines.wrap(
                messages.text(
                        "report.title",
                        brief.sheet().vehicle().name(),
                        brief.kit().name()),
                "  ");
        lines.gap();
        new LeadTable(messages).add(lines, brief.kit(), plan);
        addParts(lines, plan);
        plan.refusals()
                .forEach(r -> lines.gap()
                        .wrap(messages.text("report.refused", r.wish().word(), r.because()), "  ")
                        .wrap("  " + messages.text("report.possible-if", r.possibleIf()), "    "));
        lines.gap();
        new ClaimTable(messages).add(lines, proof);
        if (search.plansProven() > 0) {
            lines.wrap(
                    messages.text(
                            "report.search",
                            search.enumerated(),
                            search.countLeads(),
                            search.offered(),
                            search.plansProven()),
                    "  ");
        } else {
            lines.gap();
        }
        if (proofReport.isEmpty()) {
            new BesideTable(messages).add(lines, proof);
        }
        if (!proof.bounds().isEmpty()) {
            lines.wrap(bounds(proof.bounds(), proofReport), "  ");
        }
        return lines.all();
    }

    /** The closing lines: what was counted, how it ended, and the standing caution. */
    public List<String> summary(Plan plan, Proof proof) {
        VerdictCounts counts = VerdictCounts.of(proof);
        Lines lines = new Lines();
        lines.wrap(messages.text("report.caution"), "  ");
        lines.gap();
        lines.cut(messages.text(
                "report.counts",
                counts.holds(),
                counts.broken(),
                counts.open(),
                plan.refusals().size(),
                messages.text("answer." + Answer.of(plan, proof).name().toLowerCase(Locale.ROOT)),
                counts.declared()));
        return lines.all();
    }

    private String bounds(List<Phrase> bounds, Optional<Path> proofReport) {
        return proofReport
                .map(file -> messages.text("report.bounds-told-in", bounds.size(), file))
                .orElseGet(() -> messages.text(
                        "report.bounds", bounds.stream().map(messages::text).collect(Collectors.joining(" "))));
    }

    private void addParts(Lines lines, Plan plan) {
        if (plan.parts().isEmpty()) {
            return;
        }
        String parts = plan.parts().stream().map(this::part).collect(Collectors.joining(", "));
        lines.gap().wrap(messages.text("report.parts", parts), "  ");
    }

    private String part(AddedPart part) {
        return switch (part) {
            case AddedPart.Relay relay ->
                messages.text("report.part.relay", relay.id(), relay.makeRating(), relay.breakRating());
            case AddedPart.Buffer buffer -> messages.text("report.part.buffer", buffer.id(), buffer.rating());
            case AddedPart.Diode diode -> messages.text("report.part.diode", diode.id(), diode.rating());
            case AddedPart.Zener zener -> messages.text("report.part.zener", zener.id(), zener.volts());
            case AddedPart.Resistor resistor ->
                messages.text("report.part.resistor", resistor.id(), resistor.resistance());
            case AddedPart.Fuse fuse -> messages.text("report.part.fuse", fuse.id(), fuse.rating());
            case AddedPart.Pole pole -> messages.text("report.part.pole", pole.id(), pole.to(), pole.rating());
            case AddedPart.Load load -> messages.text("report.part.load", load.id(), load.extra());
            case AddedPart.StandbyBattery battery ->
                messages.text("report.part.standby-battery", battery.id(), battery.extra());
            case AddedPart.Sender sender -> messages.text("report.part.load", sender.id(), sender.extra());
            case AddedPart.PinSwitch pin -> messages.text("report.part.pin-switch", pin.id(), pin.opening());
        };
    }
}
