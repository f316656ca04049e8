package org.loomproof.cli.report;

import java.util.List;
import org.loomproof.shop.job.CarReadings;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.meter.expected.LookAlike;
import org.loomproof.workshop.meter.expected.ReadingWords;
import org.loomproof.workshop.meter.expected.Touch;
import org.loomproof.workshop.words.Messages;

/** What a meter must show at every circuit of a plan, as lines for a terminal. */
public final class ReadingsReport {

    private final Messages messages;

    /** Words come from these messages. */
    public ReadingsReport(Messages messages) {
        this.messages = messages;
    }

    /** The report. */
    public List<String> lines(CarReadings car) {
        ReadingWords said = new ReadingWords(car.brief());
        Lines lines = new Lines();
        lines.wrap(
                messages.text(
                        "report.title",
                        car.brief().sheet().vehicle().name(),
                        car.brief().kit().name()),
                "  ");
        lines.wrap(messages.text("readings.how"), "  ");
        for (CircuitReadings circuit : car.circuits()) {
            lines.gap().wrap(circuit.circuit().value(), "  ");
            if (circuit.whole().isEmpty()) {
                lines.wrap("  " + messages.text("readings.never"), "    ");
            }
            said.lines(circuit.whole()).forEach(line -> lines.wrap("  " + messages.text(line), "      "));
            addCut(lines, circuit, said);
            circuit.alike().forEach(alike -> add(lines, alike, said));
        }
        lines.gap().wrap(messages.text("report.caution"), "  ");
        return lines.all();
    }

    private void addCut(Lines lines, CircuitReadings circuit, ReadingWords said) {
        for (Touch.End end : Touch.End.values()) {
            List<ExpectedReading> there =
                    circuit.cut().stream().filter(r -> r.at().end() == end).toList();
            if (!there.isEmpty()) {
                lines.wrap(
                        "  "
                                + messages.text(
                                        "readings.cut",
                                        ReadingWords.at(there.getFirst().at())),
                        "    ");
                said.lines(there).forEach(line -> lines.wrap("    " + messages.text(line), "        "));
            }
        }
    }

    private void add(Lines lines, LookAlike alike, ReadingWords said) {
        lines.wrap(
                "  "
                        + alike.split()
                                .map(split -> messages.text(
                                        "readings.alike", alike.other(), said.when(split), ReadingWords.shows(split)))
                                .orElseGet(() -> messages.text("readings.alike-always", alike.other())),
                "      ");
    }
}
