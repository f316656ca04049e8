package org.loomproof.pages.bay;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.meter.expected.ExpectedReadings;
import org.loomproof.workshop.meter.expected.Touch;
import org.loomproof.workshop.plan.Plan;

/** A meter at a car in which every wire is what the sheet says: the middle of what must be shown. */
public final class SoundMeter {

    /** What stands at the battery's posts at each step. */
    public static final Map<String, String> BATTERY =
            Map.of("key off", "12.60", "key on", "12.40", "cranking", "10.20");

    private static final String AT_REST = "12.60";

    private final Brief brief;
    private final List<CircuitReadings> expected;

    public SoundMeter(Brief brief, Plan plan) {
        this.brief = brief;
        this.expected = ExpectedReadings.of(brief, plan);
    }

    /** All circuits that the plan touches. */
    public List<CircuitReadings> circuits() {
        return expected;
    }

    /**
     * What it shows.
     *
     * @param circuit on whose wire the tip is; {@code battery} at the posts
     * @param end {@code whole}, or the side of a cut as a work log names it
     * @param at what the car does
     */
    public String shows(String circuit, String end, MeterAt at) {
        String battery = battery(end, at);
        return expected.stream()
                .filter(readings -> readings.circuit().value().equals(circuit))
                .flatMap(readings -> Stream.concat(readings.whole().stream(), readings.cut().stream()))
                .filter(reading -> word(reading.at().end()).equals(end)
                        && MeterAt.of(reading.when(), brief.sheet()).isSameAs(at))
                .findFirst()
                .map(reading -> middle(reading, Double.parseDouble(battery)))
                .orElse(at.unit().equals("ohm") ? "OL" : battery);
    }

    /** With the wire that cranks cut, nothing turns and the battery stands as with the key on. */
    private static String battery(String end, MeterAt at) {
        boolean isCut = !end.equals(Taken.WHOLE) && at.step().equals("cranking");
        return BATTERY.getOrDefault(isCut ? "key on" : at.step(), AT_REST);
    }

    private static String middle(ExpectedReading reading, double battery) {
        return String.format(
                Locale.ROOT,
                "%.2f",
                (reading.band().low(battery) + reading.band().high(battery)) / 2);
    }

    private static String word(Touch.End end) {
        return switch (end) {
            case WHOLE -> Taken.WHOLE;
            case BEFORE_CUT -> "before-cut";
            case AFTER_CUT -> "after-cut";
        };
    }
}
