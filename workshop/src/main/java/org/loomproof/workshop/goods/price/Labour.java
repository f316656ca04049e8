package org.loomproof.workshop.goods.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/**
 * The work of one plan by kind, in minutes.
 *
 * @param lines one a kind of work that occurs, in the order of the work
 */
public record Labour(List<Line> lines) {

    private static final Map<Work, BigDecimal> USUAL_MINUTES = usualMinutes();

    public Labour {
        lines = List.copyOf(lines);
    }

    /**
     * One kind of work.
     *
     * @param work what
     * @param times how often
     * @param minutesEach how long each time
     * @param spread how long it took in this shop before, where that decides
     */
    public record Line(Work work, int times, BigDecimal minutesEach, Optional<Spread> spread) {

        /** All of it, in minutes. */
        public BigDecimal minutes() {
            return minutesEach.multiply(BigDecimal.valueOf(times));
        }
    }

    /** How long each kind usually takes, until a shop says otherwise. */
    public static Map<Work, BigDecimal> usual() {
        return USUAL_MINUTES;
    }

    /** The work of a plan, where a shop's own minutes come before the usual ones. */
    public static Labour of(Brief brief, Plan plan, Map<Work, BigDecimal> own) {
        return of(brief, plan, own, History.NONE);
    }

    /** The work of a plan. What a shop states counts before what it timed, and that before what is usual. */
    public static Labour of(Brief brief, Plan plan, Map<Work, BigDecimal> own, History history) {
        List<Line> lines = new ArrayList<>();
        count(brief, plan).forEach((work, times) -> lines.add(line(work, times, own, history)));
        return new Labour(lines);
    }

    private static Line line(Work work, int times, Map<Work, BigDecimal> own, History history) {
        Optional<Spread> spread = own.containsKey(work) ? Optional.empty() : history.find(work);
        BigDecimal usual = Objects.requireNonNull(USUAL_MINUTES.get(work));
        return new Line(work, times, spread.map(Spread::median).orElseGet(() -> own.getOrDefault(work, usual)), spread);
    }

    /** All minutes together. */
    public BigDecimal minutes() {
        return lines.stream().map(Line::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Map<Work, Integer> count(Brief brief, Plan plan) {
        Map<Work, Integer> times = new EnumMap<>(Work.class);
        times.put(Work.CHECK_IN, 1);
        times.put(Work.BENCH_LEAD, plan.hookups().size());
        Set<End> places = new HashSet<>();
        Set<CircuitId> cuts = new HashSet<>();
        for (AddedWire wire : plan.wires()) {
            places.add(wire.from());
            places.add(wire.to());
        }
        Set<String> panels = new HashSet<>();
        for (End place : places) {
            switch (place) {
                case End.Tap(var circuit) -> {
                    times.merge(Work.TAP, 1, Integer::sum);
                    panels.add(panel(brief, circuit));
                }
                case End.CutBefore(var circuit) -> cuts.add(circuit);
                case End.CutAfter(var circuit) -> cuts.add(circuit);
                case End.OfLead lead -> {}
                case End.OfPart part -> {}
                case End.Body body -> {}
            }
        }
        cuts.forEach(circuit -> panels.add(panel(brief, circuit)));
        times.put(Work.CUT, cuts.size());
        plan.parts().forEach(part -> times.merge(work(brief, part), 1, Integer::sum));
        times.put(Work.CONNECTOR, (int) plan.parts().stream()
                .flatMap(part -> part instanceof AddedPart.Pole pole ? Stream.of(pole.connector()) : Stream.empty())
                .distinct()
                .count());
        times.put(Work.PANEL, panels.size());
        times.put(Work.FINAL_TEST, 1);
        times.put(Work.HAND_OVER, 1);
        times.values().removeIf(count -> count == 0);
        return times;
    }

    /** A circuit whose place nobody said counts as behind a panel of its own. */
    private static String panel(Brief brief, CircuitId circuit) {
        String panel = brief.sheet().circuit(circuit).where().panel();
        return panel.isBlank() ? circuit.toString() : panel;
    }

    /** What putting an added part in place counts as. */
    public static Work work(Brief brief, AddedPart part) {
        return switch (part) {
            case AddedPart.PinSwitch pin -> Work.PIN_SWITCH;
            case AddedPart.StandbyBattery battery -> Work.ADDED_PART;
            case AddedPart.Load load -> mounting(brief, load.extra());
            case AddedPart.Sender sender -> mounting(brief, sender.extra());
            case AddedPart.Relay relay -> Work.ADDED_PART;
            case AddedPart.Buffer buffer -> Work.ADDED_PART;
            case AddedPart.Junction diode -> Work.ADDED_PART;
            case AddedPart.Resistor resistor -> Work.ADDED_PART;
            case AddedPart.Fuse fuse -> Work.ADDED_PART;
            case AddedPart.Pole pole -> Work.ADDED_PART;
        };
    }

    private static Work mounting(Brief brief, String extra) {
        return brief.kit().findExtra(extra).map(Labour::mounting).orElse(Work.ADDED_PART);
    }

    private static Work mounting(Extra extra) {
        return switch (extra.kind()) {
            case ACTUATOR -> Work.ACTUATOR;
            case SOUNDER -> Work.SOUNDER;
            case INDICATOR, OVERRIDE_BUTTON, SHOCK_SENSOR, INTERRUPT_RELAY, RELAY_SOCKET, OTHER -> Work.ADDED_PART;
        };
    }

    private static Map<Work, BigDecimal> usualMinutes() {
        Table table = Table.read(Labour.class, "minutes.csv");
        Map<Work, BigDecimal> minutes = new EnumMap<>(Work.class);
        for (Work work : Work.values()) {
            Row row = table.findRow("work", work.word())
                    .orElseThrow(() -> new IllegalStateException("minutes.csv has no " + work.word()));
            minutes.put(work, BigDecimal.valueOf(row.number("minutes")).stripTrailingZeros());
        }
        return Collections.unmodifiableMap(minutes);
    }
}
