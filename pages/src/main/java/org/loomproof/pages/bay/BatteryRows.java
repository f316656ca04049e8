package org.loomproof.pages.bay;

import java.util.List;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work.ReadingTaken;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.words.Phrase;

/** What is read at the battery's posts, once, so that no other reading has to say it. */
public final class BatteryRows {

    private static final List<String> STEPS = List.of("key off", "key on", "cranking");

    private BatteryRows() {}

    /** The rows, with what was read. */
    public static List<MeterRow> of(List<Noted> standing) {
        return STEPS.stream().map(step -> row(step, standing)).toList();
    }

    private static MeterRow row(String step, List<Noted> standing) {
        List<MeterRow.Shown> read = standing.stream()
                .filter(one -> one.work() instanceof ReadingTaken taken
                        && taken.circuit().equals(Reading.BATTERY)
                        && taken.step().equals(step))
                .map(one -> new MeterRow.Shown(one.id(), Taken.taken(one).value() + " V", true))
                .toList();
        return new MeterRow(
                new MeterAt(step, "", MeterAt.VOLTS),
                Phrase.of("pages.bay.battery." + step.replace(' ', '-')),
                Phrase.of("pages.bay.battery.shows-" + step.replace(' ', '-')),
                read);
    }
}
