package org.loomproof.workshop.meter.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.evidence.Likelihood;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.MeterFacts;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Readings;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.meter.synthetic.Papers;
import org.loomproof.workshop.problem.Place;

/**
 * Whatever is read on whatever wire, with and without a sheet: nothing is proposed that could hurt. What hurts is counted here
 * afresh from the probabilities that are told. (What hurts what: common practice, no published source.)
 */
class SafetyTest {

    private static final Set<WireRole> NEVER_LOADED = Set.of(WireRole.DATA, WireRole.RESTRAINT, WireRole.TACHOMETER);
    private static final Set<WireRole> NEVER_JOINED =
            Set.of(WireRole.DATA, WireRole.RESTRAINT, WireRole.DEAD, WireRole.NONE_OF_THESE);

    private final Random random = new Random(Sample.seed());

    @Test
    void nothingIsProposedThatCouldHurt() {
        Sheet empty = AVehicle.named("all").sheet();
        List<Circuit> all =
                Arrays.stream(CircuitRole.values()).map(Papers::entry).toList();
        Sheet sheet = new Sheet(empty.vehicle(), empty.operables(), all);
        Identifier with = new Identifier(Optional.of(sheet), Costs.USUAL);
        Identifier without = new Identifier(Optional.empty(), Costs.USUAL);
        int proposed = 0;
        for (int round = 0; round < Sample.count(3, 60); round++) {
            List<Reading> readings = new ArrayList<>();
            for (Circuit circuit : all) {
                for (int k = random.nextInt(1, 13); k > 0; k--) {
                    readings.add(any(circuit.id().value()));
                }
            }
            for (WireFinding finding : without.identify(new Readings(readings))) {
                proposed += checked(finding, readings).size();
            }
            for (WireFinding finding : with.identify(new Readings(readings))) {
                List<MeterTest> tests = checked(finding, readings);
                proposed += tests.size();
                CircuitRole role = sheet.circuit(finding.entry().orElseThrow()).role();
                if (role == CircuitRole.RESTRAINT || role == CircuitRole.HIGH_VOLTAGE) {
                    assertThat(tests).as(finding.wire()).isEmpty();
                    assertThat(finding.connect().allowed()).isFalse();
                    assertThat(finding.cut().allowed()).isFalse();
                }
            }
        }
        Note.that("wires by the meter: %d proposed tests on random readings, none could hurt".formatted(proposed));
        assertThat(proposed).isPositive();
    }

    private static List<MeterTest> checked(WireFinding finding, List<Reading> readings) {
        List<MeterTest> tests = new ArrayList<>();
        finding.next().ifPresent(next -> tests.add(next.test()));
        finding.split().ifPresent(split -> tests.add(split.test()));
        double hurt = NEVER_LOADED.stream()
                .mapToDouble(role -> finding.chances().getOrDefault(role, 0.0))
                .sum();
        for (MeterTest test : tests) {
            assertThat(test.kind()).isNotEqualTo(MeterTest.Kind.TEST_LAMP);
            if (test.kind() == MeterTest.Kind.RESISTOR || test.kind() == MeterTest.Kind.OHMS) {
                assertThat(hurt).as(finding.wire() + " " + test).isLessThan(0.005);
            }
            assertThat(finding.chances().getOrDefault(WireRole.RESTRAINT, 0.0)).isLessThan(0.05);
        }
        if (NEVER_JOINED.contains(finding.best())) {
            assertThat(finding.connect().allowed()).isFalse();
        }
        if (finding.cut().allowed()) {
            assertThat(NEVER_JOINED).doesNotContain(finding.best());
            assertThat(finding.cut().lacks()).as("the proof of both ends").isNotEmpty();
            assertThat(finding.chances().getOrDefault(finding.best(), 0.0)).isGreaterThan(0.9);
        }
        if (finding.connect().allowed() && finding.best() == WireRole.IGNITION) {
            assertThat(readings)
                    .anyMatch(r -> r.wire().equals(finding.wire())
                            && r.step().key() == Step.KeyAt.CRANKING
                            && !Likelihood.isTooSlow(r));
        }
        return tests;
    }

    private Reading any(String wire) {
        Step.KeyAt[] keys = Step.KeyAt.values();
        Step.Worked[] things = Step.Worked.values();
        Step step = Step.at(keys[random.nextInt(keys.length)]);
        if (random.nextBoolean()) {
            step = step.working(things[random.nextInt(things.length)]);
        }
        boolean isOhms = random.nextInt(10) == 0;
        step = isOhms ? step.withBatteryOff() : random.nextInt(10) == 0 ? step.fallenAsleep() : step;
        MeterFacts meter =
                new MeterFacts(10e6, 0.5, 2, random.nextBoolean() ? MeterFacts.Pace.SLOW : MeterFacts.Pace.FAST);
        OptionalDouble battery = random.nextBoolean() ? OptionalDouble.of(12.5) : OptionalDouble.empty();
        return new Reading(
                Place.nowhere("made up"),
                wire,
                step,
                isOhms ? Measured.OHMS : Measured.VOLTS,
                shown(isOhms),
                battery,
                meter,
                "",
                "",
                "");
    }

    private Shown shown(boolean isOhms) {
        double volts = List.of(0.0, 12.4, 5.0, 2.5, 13 * random.nextDouble()).get(random.nextInt(5));
        return switch (random.nextInt(8)) {
            case 0 -> isOhms ? new Shown.Overload() : new Shown.Floating();
            case 1 -> isOhms ? new Shown.Overload() : new Shown.Alternating(3 * random.nextDouble());
            case 2 -> new Shown.Moving(volts, volts + 1);
            case 3 -> new Shown.NotTaken();
            default -> new Shown.Steady(isOhms ? Math.pow(10, 7 * random.nextDouble() - 1) : volts, 0.01);
        };
    }

    /** The words that stop everything, wherever they are written. */
    @Test
    void wordsOfRestraintsAndHighVoltageStopEverything() {
        Identifier without = new Identifier(Optional.empty(), Costs.USUAL);
        for (String word : List.of("under the airbag", "SRS plug", "orange cable", "seat pretensioner", "HV box")) {
            Reading plain = any("w");
            Reading spoken = new Reading(
                    plain.at(),
                    "w",
                    Step.REST,
                    Measured.VOLTS,
                    new Shown.Steady(12.5, 0.1),
                    plain.batteryVolts(),
                    plain.meter(),
                    word,
                    "",
                    "");
            WireFinding found = without.identify(new Readings(List.of(spoken))).getFirst();
            assertThat(found.next()).as(word).isEmpty();
            assertThat(found.split()).as(word).isEmpty();
            assertThat(found.connect().allowed()).as(word).isFalse();
            assertThat(found.cut().allowed()).as(word).isFalse();
        }
    }

    /** What the sheet calls its switches is understood by the circuits that follow them. */
    @Test
    void aSwitchOfTheSheetIsWhatItsCircuitsSay() {
        Sheet van = AVehicle.named("van")
                .door("rear-door")
                .control("light-switch", "off", "side")
                .control("seat-switch", "off", "up")
                .withParkingLamps("lamps", "light-switch", "side", 20)
                .sheet();
        assertThat(NamedThings.of(van))
                .isEqualTo(Map.of(
                        "rear-door",
                        Step.Worked.DOOR,
                        "light-switch",
                        Step.Worked.LAMPS,
                        "seat-switch",
                        Step.Worked.SWITCH));
    }
}
