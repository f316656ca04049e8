package org.loomproof.cli.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.intake.kit.LeadReading;
import org.loomproof.shop.notes.KitReading;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.quantity.QuantityWriter;
import org.loomproof.workshop.trade.colour.WireColour;
import org.loomproof.workshop.words.Messages;

/** A list of leads line by line: what was understood, how sure, and what is asked. */
public final class KitNotesReport {

    private final Messages messages;

    /** Words come from these messages. */
    public KitNotesReport(Messages messages) {
        this.messages = messages;
    }

    /** The report. */
    public List<String> lines(KitReading reading) {
        NotesLines report = new NotesLines(messages);
        List<LeadReading> leads = reading.notes().leads();
        report.lines()
                .cut(messages.text(
                        "intake.report.head-kit",
                        reading.source().name(),
                        reading.source().encoding(),
                        leads.size(),
                        reading.source().lines().size()));
        leads.forEach(lead -> lead(report, lead));
        report.loose("intake.report.loose-kit", reading.notes().loose());
        int asked = leads.stream().mapToInt(l -> l.asks().size()).sum();
        long clear = leads.stream().filter(l -> l.asks().isEmpty()).count();
        report.lines().gap().wrap(messages.text("intake.report.facts-kit", asked), "  ");
        report.lines().cut(messages.text("intake.report.count-kit", leads.size(), clear));
        return report.lines().all();
    }

    private void lead(NotesLines report, LeadReading lead) {
        String name = lead.name().isBlank() ? messages.text("intake.report.unnamed") : lead.name();
        report.lines().gap().cut("  " + lead.origin() + "  " + lead.id() + "  " + name);
        report.field("intake.report.role", lead.role(), LeadRole::word, messages.text("intake.report.not-read"));
        report.field(
                "intake.report.colour", lead.colour(), WireColour::letters, messages.text("intake.report.not-said"));
        if (lead.size().isPresent()) {
            report.field("intake.report.size", lead.size(), QuantityWriter::write, "");
        }
        String figures = String.join(
                ", ",
                Stream.of(
                                lead.port().map(port -> port(port, lead)),
                                lead.contact()
                                        .map(contact -> messages.text("intake.report.contact-" + Words.of(contact))),
                                lead.rating().map(QuantityWriter::write),
                                lead.pulse().map(QuantityWriter::write))
                        .flatMap(Optional::stream)
                        .toList());
        report.field("intake.report.port", Optional.empty(), x -> "", figures);
        lead.asks().forEach(ask -> report.ask(ask, "intake.report.asked"));
        report.leftOver(lead.leftOver());
    }

    private String port(LeadReading.PortKind port, LeadReading lead) {
        return switch (port) {
            case SUPPLY -> messages.text("term.port.supply");
            case GROUND -> messages.text("term.port.ground");
            case LOW_INPUT -> messages.text("term.port.input-low");
            case HIGH_INPUT -> messages.text("term.port.input-high");
            case LOW_SIDE -> messages.text("term.port.low-side");
            case HIGH_SIDE -> messages.text("term.port.high-side");
            case TO_EXTRA ->
                messages.text(
                        "term.port.to-extra",
                        lead.role().map(a -> a.value().word()).orElse("-"));
        };
    }
}
