package org.loomproof.pages.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.book.card.Author;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.Work.SheetChecked;
import org.loomproof.pages.work.Work.SheetChecked.Says;
import org.loomproof.workshop.brief.sheet.CircuitId;

/** What the readings at the bakery's van say of the entries of its sheet, and when that is written down. */
class SheetCheckTest {

    private static final Instant NOW = Instant.parse("2026-11-26T09:00:00Z");
    private static final CircuitId LAMPS = new CircuitId("side-lamps");
    private static final CircuitId IGNITION = new CircuitId("ignition");

    private final SheetCheck check =
            new SheetCheck(BayVan.planned(), Map.of(LAMPS, "sum-of-lamps", IGNITION, "sum-of-ignition"));
    private final List<Noted> log = new ArrayList<>();

    private Entry read(CircuitId circuit, String step, String position, String volts) {
        Entry entry = Entry.of(NOW, new Work.ReadingTaken(circuit.value(), "whole", step, position, volts, "V", ""));
        log.add(new Noted(entry, Author.CONSOLE, NOW));
        return entry;
    }

    private List<Work> changed() {
        List<Entry> entries = log.stream().map(Noted::entry).toList();
        List<Entry> changed = check.changed(SheetCheck.touched(entries, log), log, NOW);
        changed.forEach(entry -> log.add(new Noted(entry, Author.CONSOLE, NOW)));
        return changed.stream().map(Entry::work).toList();
    }

    @Test
    void theRightWireConfirmsItsEntryOnceAndAReadingTakenBackTakesThatBack() {
        read(new CircuitId("battery"), "key off", "", "12.60");
        assertThat(changed()).as("the battery is no entry").isEmpty();
        MeterAt off = lamps(0);
        MeterAt on = lamps(1);
        read(LAMPS, off.step(), off.position(), "0.00");
        assertThat(changed()).as("not decided").isEmpty();
        Entry second = read(LAMPS, on.step(), on.position(), "12.60");
        assertThat(changed()).containsExactly(new SheetChecked("side-lamps", "sum-of-lamps", Says.CONFIRMED));
        assertThat(changed()).as("said already").isEmpty();

        List<Noted> all = List.copyOf(log);
        log.removeIf(noted -> noted.id().equals(second.id()));
        Entry undone = Entry.of(NOW, new Work.Undone(second.id()));
        Set<CircuitId> touched = SheetCheck.touched(List.of(undone), all);
        assertThat(touched).containsExactly(LAMPS);
        assertThat(check.changed(touched, log, NOW))
                .extracting(Entry::work)
                .containsExactly(new SheetChecked("side-lamps", "sum-of-lamps", Says.OPEN));
    }

    private MeterAt lamps(int row) {
        return check.bay().metered(LAMPS, List.of()).rows().get(row).at();
    }

    /** A constant supply is read where the sheet has the ignition. */
    @Test
    void anotherWireContradictsItsEntry() {
        read(new CircuitId("battery"), "key off", "", "12.60");
        read(new CircuitId("battery"), "key on", "", "12.40");
        read(new CircuitId("battery"), "cranking", "", "10.20");
        for (MeterRow row : check.bay().metered(IGNITION, List.of()).rows()) {
            String volts = row.at().step().equals("cranking")
                    ? "10.20"
                    : row.at().step().equals("key on") ? "12.40" : "12.60";
            read(IGNITION, row.at().step(), row.at().position(), volts);
        }
        assertThat(changed()).containsExactly(new SheetChecked("ignition", "sum-of-ignition", Says.CONTRADICTED));
    }

    @Test
    void whatThePlanDoesNotJoinAndTheSheetDoesNotSayIsLeft() {
        read(new CircuitId("no-such-wire"), "key on", "", "12.40");
        read(new CircuitId("constant"), "key on", "", "12.40");
        assertThat(changed()).isEmpty();
    }
}
