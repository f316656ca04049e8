package org.loomproof.pages.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.book.card.Author;
import org.loomproof.pages.bay.CircuitAnswer.Kind;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.plan.Plan;

/** The bakery's van in the bay: what its wires show, followed reading by reading as the answers ask for them. */
class BayJobTest {

    private static final Instant NOW = Instant.parse("2026-11-26T09:00:00Z");
    private static final int MOST_READINGS = 8;

    private static final MeterAt CRANKING = new MeterAt("cranking", "", MeterAt.VOLTS);

    private final BayJob bay = BayVan.planned();
    private final Brief brief = bay.brief();
    private final Plan plan = bay.plan();
    private final SoundMeter meter = new SoundMeter(brief, plan);

    @Test
    void theRightWireIsKnownByTheReadingsThatAreAskedFor() {
        for (CircuitReadings circuit : meter.circuits()) {
            List<Noted> log = battery();
            CircuitAnswer answer = bay.metered(circuit.circuit(), log).answer();
            assertThat(answer.isIt()).as("before anything was read").isFalse();
            int readings = 0;
            while (!answer.isIt() && answer.next().isPresent() && readings < MOST_READINGS) {
                MeterAt at = answer.next().orElseThrow().at();
                log.add(noted(circuit.circuit(), at, shown(circuit.circuit(), at)));
                answer = bay.metered(circuit.circuit(), log).answer();
                readings++;
            }
            assertThat(answer.kind())
                    .as("%s after %d readings: %s", circuit.circuit(), readings, answer.reasons())
                    .isEqualTo(Kind.THIS_IS_IT);
        }
    }

    /** What another wire of the van shows, read where this one is meant. */
    @Test
    void anotherWireIsNeverTakenForIt() {
        CircuitReadings ignition = meter.circuits().stream()
                .filter(one -> one.circuit().value().equals("ignition"))
                .findFirst()
                .orElseThrow();
        List<Noted> log = battery();
        for (ExpectedReading reading : ignition.whole()) {
            MeterAt at = MeterAt.of(reading.when(), brief.sheet());
            log.add(noted(ignition.circuit(), at, shown(new CircuitId("constant"), at)));
        }
        CircuitAnswer answer = bay.metered(ignition.circuit(), log).answer();
        assertThat(answer.kind()).isIn(Kind.NOT_IT, Kind.ONE_MORE);
        assertThat(answer.reasons()).as("never just an error").isNotEmpty();
    }

    /** The key at start, the starter's wire cut: whether the engine still turns or not, the battery's volts stand at one end alone. */
    @Test
    void theEndsOfACutStarterWireAreToldApartHoweverFarTheBatteryFalls() {
        for (String battery : List.of("12.30", "10.00")) {
            assertThat(starterCut(battery, "0.00").ends())
                    .as("towards the switch %s V", battery)
                    .allMatch(CutStand.End::isProven);
            assertThat(starterCut("0.00", battery).ends())
                    .as("ends taken for each other")
                    .noneMatch(CutStand.End::isProven);
            assertThat(starterCut(battery, battery).isProven())
                    .as("the cut is none")
                    .isFalse();
        }
    }

    private CutStand starterCut(String before, String after) {
        List<Noted> log = battery();
        log.add(noted("starter", "before-cut", CRANKING, before));
        log.add(noted("starter", "after-cut", CRANKING, after));
        log.add(new Noted(Entry.of(NOW, new Work.CutMade("starter")), Author.CONSOLE, NOW));
        return bay.metered(new CircuitId("starter"), log).cut(log);
    }

    private String shown(CircuitId circuit, MeterAt at) {
        return meter.shows(circuit.value(), Taken.WHOLE, at);
    }

    private static List<Noted> battery() {
        List<Noted> log = new ArrayList<>();
        SoundMeter.BATTERY.forEach(
                (step, volts) -> log.add(noted(new CircuitId("battery"), new MeterAt(step, "", "V"), volts)));
        return log;
    }

    private static Noted noted(CircuitId circuit, MeterAt at, String value) {
        return noted(circuit.value(), Taken.WHOLE, at, value);
    }

    private static Noted noted(String circuit, String end, MeterAt at, String value) {
        return new Noted(
                Entry.of(NOW, new Work.ReadingTaken(circuit, end, at.step(), at.position(), value, at.unit(), "")),
                Author.CONSOLE,
                NOW);
    }
}
