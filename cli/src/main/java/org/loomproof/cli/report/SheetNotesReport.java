package org.loomproof.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Finding;
import org.loomproof.intake.check.SwitchingWords;
import org.loomproof.intake.fact.VehicleFact;
import org.loomproof.intake.fact.VehicleFacts;
import org.loomproof.intake.field.Spot;
import org.loomproof.intake.sheet.HeldBack;
import org.loomproof.intake.sheet.Merge;
import org.loomproof.intake.sheet.Placed;
import org.loomproof.shop.notes.SheetReading;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.brief.write.SheetWriter;
import org.loomproof.workshop.quantity.QuantityWriter;
import org.loomproof.workshop.trade.colour.WireColour;
import org.loomproof.workshop.words.Messages;

/** Wiring notes line by line: what was understood, how sure, and what is left to be settled. */
public final class SheetNotesReport {

    private final Messages messages;

    /** Words come from these messages. */
    public SheetNotesReport(Messages messages) {
        this.messages = messages;
    }

    /** The report. */
    public List<String> lines(SheetReading reading) {
        NotesLines report = new NotesLines(messages);
        List<Entry> entries = reading.notes().entries();
        report.lines()
                .cut(messages.text(
                        "intake.report.head",
                        reading.source().name(),
                        reading.source().encoding(),
                        entries.size(),
                        reading.source().lines().size()));
        for (Placed placed : reading.draft().placed()) {
            entry(report, placed.entry());
            reading.review().stream()
                    .filter(line -> line.entry().origin().equals(placed.entry().origin()))
                    .flatMap(line -> line.suggestions().stream())
                    .forEach(s -> report.remark(
                            "intake.report.suggested",
                            s.correction().written(),
                            Words.of(s.correction().field()),
                            s.correction().means(),
                            s.times(),
                            s.ofAll(),
                            Math.round(s.sure() * 100),
                            placed.entry().origin().line()));
            switch (placed) {
                case Placed.OnSheet(Entry entry, Circuit circuit) -> onSheet(report, entry, circuit);
                case HeldBack held -> {
                    report.remark("intake.report.held-back", messages.text("intake.held." + Words.of(held.reason())));
                    report.ask(held.ask(), "intake.report.ask");
                }
            }
        }
        report.loose("intake.report.loose", reading.notes().loose());
        findings(report, reading);
        reading.merge().ifPresent(merge -> merge(report, merge));
        vehicle(report, reading.vehicle());
        missing(report, reading);
        report.lines()
                .gap()
                .cut(messages.text(
                        "intake.report.count",
                        reading.draft().circuits().size(),
                        reading.draft().heldBack().size(),
                        reading.notes().findings().size()));
        return report.lines().all();
    }

    private void entry(NotesLines report, Entry entry) {
        String name = entry.name().isBlank() ? messages.text("intake.report.unnamed") : entry.name();
        report.lines().gap().cut("  " + entry.origin() + "  " + name);
        String notRead = messages.text("intake.report.not-read");
        String notSaid = messages.text("intake.report.not-said");
        report.field("intake.report.role", entry.role(), r -> r.role().word(), notRead);
        report.field(
                "intake.report.colour",
                entry.colour(),
                WireColour::letters,
                entry.colourAsWritten().isEmpty()
                        ? notSaid
                        : messages.text("intake.report.colour-kept", entry.colourAsWritten()));
        if (entry.size().isPresent()) {
            report.field("intake.report.size", entry.size(), QuantityWriter::write, "");
        }
        report.field(
                "intake.report.switching", entry.behaviour(), b -> messages.text(SwitchingWords.of(b.kind())), notSaid);
        report.field("intake.report.place", entry.spot(), SheetNotesReport::place, notSaid);
        if (entry.doubted()) {
            report.remark("intake.report.doubted");
        }
        if (!entry.steering().isEmpty()) {
            report.remark("intake.report.steering", entry.steering());
        }
        if (!entry.validity().isEmpty()) {
            report.remark("intake.report.validity", entry.validity());
        }
        report.notes(entry.notes());
        report.leftOver(entry.leftOver());
    }

    private static String place(Spot spot) {
        return List.of(spot.panel(), spot.connector(), spot.cavity()).stream()
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private void onSheet(NotesLines report, Entry entry, Circuit circuit) {
        report.remark(
                "intake.report.on-sheet",
                circuit.id(),
                messages.text("term.certainty." + Words.of(circuit.basis().certainty())));
        boolean restSaid = entry.behaviour().flatMap(a -> a.value().rest()).isPresent();
        if (!restSaid && circuit.basis().certainty() == Certainty.GUESSED) {
            report.remark(
                    "intake.report.rest-usual",
                    SheetWriter.level(circuit.switching().rest()));
        }
    }

    private void findings(NotesLines report, SheetReading reading) {
        if (reading.notes().findings().isEmpty()) {
            return;
        }
        report.lines().gap().cut(messages.text("intake.report.settle"));
        for (Finding finding : reading.notes().findings()) {
            String where = finding.entries().stream()
                    .map(i -> reading.notes().entries().get(i).origin().toString())
                    .collect(Collectors.joining("; "));
            report.lines()
                    .wrap("  " + messages.text("intake.report.finding", messages.text(finding.says()), where), "    ");
            report.ask(finding.ask(), "intake.report.ask");
        }
    }

    private void merge(NotesLines report, Merge merge) {
        report.lines().gap().cut(messages.text("intake.report.merge"));
        merge.agreements().forEach(id -> report.lines().wrap("  " + messages.text("intake.report.agrees", id), "    "));
        merge.conflicts()
                .forEach(c -> report.lines()
                        .wrap("  " + messages.text("intake.report.differs", c.there(), c.beside()), "    "));
        merge.added().forEach(id -> report.lines().wrap("  " + messages.text("intake.report.added", id), "    "));
    }

    /** What the notes say of the vehicle: for a person to take. */
    private void vehicle(NotesLines report, VehicleFacts vehicle) {
        if (vehicle.agreed().isEmpty() && vehicle.differing().isEmpty()) {
            return;
        }
        report.lines().gap().cut(messages.text("intake.report.vehicle"));
        vehicle.agreed().forEach(fact -> fact(report, "intake.report.vehicle-fact", fact));
        vehicle.differing().forEach(fact -> fact(report, "intake.report.vehicle-differs", fact));
    }

    private void fact(NotesLines report, String key, VehicleFact fact) {
        report.lines().wrap("  " + messages.text(key, fact.key(), fact.value(), fact.origin(), fact.written()), "    ");
    }

    private void missing(NotesLines report, SheetReading reading) {
        if (!reading.missing().isEmpty()) {
            report.lines().gap().cut(messages.text("intake.report.missing-head"));
            reading.missing()
                    .forEach(m -> report.lines()
                            .wrap(
                                    "  "
                                            + messages.text(
                                                    "intake.report.missing",
                                                    m.role().word(),
                                                    m.wishes().stream()
                                                            .map(w -> w.word())
                                                            .toList()),
                                    "    "));
        }
        if (!reading.missingFacts().isEmpty()) {
            report.lines()
                    .gap()
                    .wrap(
                            messages.text(
                                    "intake.report.facts",
                                    reading.missingFacts().keySet()),
                            "  ");
        }
    }
}
