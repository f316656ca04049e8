package org.loomproof.workshop.meter.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.reading.Readings;
import org.loomproof.workshop.meter.reading.ReadingsReader;
import org.loomproof.workshop.meter.reading.Step.KeyAt;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

class IdentifierTest {

    private static final Messages ENGLISH = Messages.english();
    private static final Identifier WITHOUT_SHEET = new Identifier(Optional.empty(), Costs.USUAL);

    private static Readings readings(String lines) {
        String text = "wire,step,value,unit,battery,meter,place,colour,note\n" + lines;
        Checked<Readings> read = new ReadingsReader(Map.of()).read(new SourceText("r.csv", text));
        return ((Checked.Good<Readings>) read).value();
    }

    private static WireFinding one(String lines) {
        return WITHOUT_SHEET.identify(readings(lines)).getFirst();
    }

    private static String text(List<Phrase> phrases) {
        return phrases.stream().map(ENGLISH::text).toList().toString();
    }

    private static double chance(WireFinding finding, WireRole role) {
        return finding.chances().getOrDefault(role, 0.0);
    }

    @Test
    void theSameVoltsInEveryKeyPositionAndWithoutKeyAreAConstant() {
        WireFinding found = one("""
                w,no key,12.6,V,12.6
                w,key off,12.6,V,12.6
                w,key acc,12.5,V,12.5
                w,key on,12.3,V,12.3
                w,cranking,10.2,V,10.3,min/max
                w,lamps on,12.4,V,12.4
                w,opened door,12.6,V,12.6
                w,pressed lock,12.6,V,12.6
                w,pressed unlock,12.6,V,12.6
                w,pressed horn,12.6,V,12.6
                w,opened trunk,12.6,V,12.6
                w,pressed release,12.6,V,12.6
                w,opened hood,12.6,V,12.6
                w,pressed dome,12.6,V,12.6
                """);
        assertThat(found.best()).isEqualTo(WireRole.CONSTANT);
        assertThat(text(found.not().stream().map(WireFinding.RuledOut::by).toList()))
                .contains("not a true ignition");
        assertThat(text(found.connect().lacks())).doesNotContain("a reading");
    }

    /**
     * Common practice, no published source: a constant reads the battery in every position of the key and without one, a true
     * ignition with the key on and while cranking, a starter wire only while cranking.
     */
    @Test
    void noKeyedWireIsJoinedBeforeItWasReadWhereItsRoleShows() {
        Map<String, String> constant = Map.of(
                "w,no key,12.6,V,12.6\n", "no key in the lock",
                "w,key off,12.6,V,12.6\n", "the key off",
                "w,key acc,12.5,V,12.5\n", "first position",
                "w,key on,12.3,V,12.3\n", "the key on",
                "w,cranking,10.2,V,10.3,min/max\n", "while cranking");
        asksForEach(constant, WireRole.CONSTANT, AVehicle.named("van").withConstantSupply("w", 20));
        Map<String, String> ignition = Map.of(
                "w,key off,0.0,V,12.6\n", "the key off",
                "w,key on,12.2,V,12.3\n", "the key on",
                "w,cranking,10.2,V,10.3,min/max\n", "while cranking");
        asksForEach(ignition, WireRole.IGNITION, AVehicle.named("van").withIgnition("w"));
        Map<String, String> starter = Map.of(
                "w,key off,0.0,V,12.6\n", "the key off",
                "w,key on,0.0,V,12.3\n", "the key on",
                "w,cranking,10.2,V,10.3,min/max\n", "while cranking");
        asksForEach(
                starter,
                WireRole.STARTER,
                AVehicle.named("van").withIgnition("ignition").withStarter("w", 0.5));
    }

    /** With all readings of a sheet's wire it may be joined; with any one left out that one is asked for. */
    private static void asksForEach(Map<String, String> lines, WireRole role, AVehicle car) {
        Identifier identifier = new Identifier(Optional.of(car.sheet()), Costs.USUAL);
        String all = String.join("", new TreeSet<>(lines.keySet()));
        WireFinding found = identifier.identify(readings(all)).getFirst();
        assertThat(found.best()).isEqualTo(role);
        assertThat(found.connect().allowed())
                .as(role + text(found.connect().lacks()))
                .isTrue();
        lines.forEach((line, asked) -> {
            WireFinding less =
                    identifier.identify(readings(all.replace(line, ""))).getFirst();
            assertThat(less.connect().allowed()).as(role + " without " + line).isFalse();
            assertThat(text(less.connect().lacks()))
                    .as(role + " without " + line)
                    .contains(asked);
        });
    }

    @Test
    void aTrueIgnitionWantsACrankingSampleAndASlowMetersDoesNotCount() {
        String keyed = """
                w,key off,0.00,V,12.6
                w,key acc,0.01,V,12.5
                w,key on,12.2,V,12.3
                """;
        WireFinding without = one(keyed);
        assertThat(without.connect().allowed()).isFalse();
        assertThat(without.next().orElseThrow().test()).isEqualTo(MeterTest.CRANKING);

        WireFinding slow = one(keyed + "w,cranking,11.9,V,10.4,slow\n");
        assertThat(slow.connect().allowed()).isFalse();
        assertThat(text(slow.cautions())).contains("slow meter");

        WireFinding seen = one(keyed + "w,cranking,10.2,V,10.4,min/max\nw,running,13.9,V,14.1\n");
        assertThat(seen.best()).isEqualTo(WireRole.IGNITION);
        assertThat(seen.connect().allowed()).as(text(seen.connect().lacks())).isTrue();
        assertThat(text(seen.because())).contains("cranking read 10.2 V");

        WireFinding fallen = one(keyed + "w,cranking,0.1,V,10.4,min/max\n");
        assertThat(fallen.best()).isEqualTo(WireRole.SECOND_IGNITION);
    }

    @Test
    void aDoorLineWantsAReadingWithTheCarAsleep() {
        String doors = """
                w,key off,5.02,V,12.6
                w,opened door,0.03,V,12.6
                w,key on,5.01,V,12.3
                w,pressed dome,5.01,V,12.6
                """;
        WireFinding awake = one(doors);
        assertThat(awake.best()).isEqualTo(WireRole.DOOR_TRIGGER);
        assertThat(awake.connect().allowed()).isFalse();
        assertThat(awake.next().orElseThrow().test()).isEqualTo(MeterTest.ASLEEP);
        assertThat(one(doors + "w,asleep,0.02,V,12.6\n").connect().allowed()).isTrue();
    }

    @Test
    void zeroVoltsAreGroundADeadWireOrARestingMotorLegAndTheSplittingTestIsOffered() {
        String keyed = "w,key off,0.00,V,12.6\nw,key on,0.00,V,12.3\nw,cranking,0.01,V,10.4,min/max\n";
        WireFinding zero = one(keyed);
        for (WireRole role : List.of(WireRole.GROUND, WireRole.DEAD, WireRole.LOCK_MOTOR_LEG)) {
            assertThat(chance(zero, role)).as(role.word()).isGreaterThan(0.01);
        }
        assertThat(zero.connect().allowed()).isFalse();
        assertThat(zero.split().orElseThrow().roles())
                .containsExactly(WireRole.GROUND, WireRole.LOCK_MOTOR_LEG, WireRole.DEAD);
        // A few tenths of an ohm are a ground as well as the cold filaments of the brake lamps, and no dead wire.
        WireFinding led = one(keyed + "w,battery off,0.3,ohm\n");
        assertThat(led.chances().keySet().stream().limit(4)).contains(WireRole.GROUND);
        assertThat(chance(led, WireRole.DEAD)).isLessThan(1e-3);
        WireFinding open = one(keyed + "w,battery off,OL,ohm\n");
        assertThat(chance(open, WireRole.DEAD)).isGreaterThan(3 * chance(zero, WireRole.DEAD));
        assertThat(chance(open, WireRole.GROUND)).isLessThan(chance(zero, WireRole.GROUND) / 2);
        WireFinding turned = one(keyed + "w,pressed lock,12.1,V,12.5\nw,pressed unlock,0.02,V,12.5\n");
        assertThat(chance(turned, WireRole.LOCK_MOTOR_LEG)).isGreaterThan(chance(turned, WireRole.GROUND));
    }

    @Test
    void aCutWantsTwoIndependentPiecesOfEvidenceAndTheProofOfBothEnds() {
        String cranked = """
                w,key off,0.01,V,12.6
                w,key acc,0.00,V,12.5
                w,key on,0.02,V,12.3
                w,cranking,10.1,V,10.3,min/max
                w,running,0.02,V,14.1
                """;
        WireFinding byVolts = one(cranked);
        assertThat(byVolts.best()).isEqualTo(WireRole.STARTER);
        assertThat(byVolts.cut().allowed()).isFalse();
        assertThat(text(byVolts.cut().lacks())).contains("independent pieces");

        Costs bold = new Costs(2, 10);
        WireFinding both = new Identifier(Optional.empty(), bold)
                .identify(readings(cranked + "w,battery off,70,ohm\n"))
                .getFirst();
        assertThat(both.cut().allowed()).as(text(both.cut().lacks())).isTrue();
        assertThat(text(both.cut().lacks())).contains("both ends", "no longer cranks");
    }

    @Test
    void theDearerAnErrorTheMoreIsAskedFor() {
        assertThat(new Costs(10, 200).connectAt()).isEqualTo(0.9);
        assertThat(new Costs(10, 200).cutAt()).isEqualTo(0.995);
        Readings lamp = readings("w,key off,0.0,V,12.6\nw,lamps on,12.3,V,12.5\n");
        WireFinding cheap = new Identifier(Optional.empty(), new Costs(2, 200))
                .identify(lamp)
                .getFirst();
        WireFinding dear = new Identifier(Optional.empty(), new Costs(10_000, 20_000))
                .identify(lamp)
                .getFirst();
        assertThat(cheap.connect().allowed()).isTrue();
        assertThat(dear.connect().allowed()).isFalse();
        assertThat(dear.next()).isPresent();
    }

    @Test
    void ofTwoWiresThatRiseWhileCrankingNeitherIsTheStarterForSure() {
        String one = """
                NAME,key off,0.01,V,12.6
                NAME,key on,0.02,V,12.3
                NAME,cranking,10.1,V,10.3,min/max
                NAME,running,0.02,V,14.1
                """;
        List<WireFinding> two = WITHOUT_SHEET.identify(readings(one.replace("NAME", "a") + one.replace("NAME", "b")));
        assertThat(chance(two.get(0), WireRole.STARTER) + chance(two.get(1), WireRole.STARTER))
                .isLessThanOrEqualTo(1.0);
        assertThat(two.getFirst().cut().allowed()).isFalse();
    }

    @Test
    void aSheetMakesItSurerAndAWrongRowIsFoundOut() {
        Sheet sheet = AVehicle.named("van")
                .withConstantSupply("constant", 20)
                .withIgnition("ignition")
                .withStarter("starter", 0.5)
                .sheet();
        String keyed = "ignition,key off,0.0,V,12.6\nignition,key on,12.2,V,12.3\n";
        double with = chance(
                new Identifier(Optional.of(sheet), Costs.USUAL)
                        .identify(readings(keyed))
                        .getFirst(),
                WireRole.IGNITION);
        assertThat(with).isGreaterThan(chance(one(keyed), WireRole.IGNITION));
        String fallen = "ignition,cranking,0.0,V,10.3,min/max\n";
        WireFinding wrong = new Identifier(Optional.of(stated(sheet)), Costs.USUAL)
                .identify(readings(keyed + fallen + "ignition,key acc,0.0,V,12.5\n" + fallen))
                .getFirst();
        assertThat(wrong.best()).isEqualTo(WireRole.SECOND_IGNITION);
    }

    /** However sure an entry is, a wire is proven by the meter before anything is joined to it. */
    @Test
    void noWireIsJoinedByAPaperAlone() {
        Sheet sheet = AVehicle.named("van")
                .door("door")
                .withConstantSupply("constant", 20)
                .withIgnition("ignition")
                .withStarter("starter", 0.5)
                .withNegativeTrigger("dome", CircuitRole.INTERIOR_LIGHT, 10, "door")
                .sheet();
        for (Sheet paper : List.of(sheet, stated(sheet))) {
            Identifier identifier = new Identifier(Optional.of(paper), Costs.USUAL);
            for (Circuit circuit : paper.circuits()) {
                WireFinding unread = identifier
                        .identify(readings(circuit.id().value() + ",key on,not taken,V\n"))
                        .getFirst();
                assertThat(unread.connect().allowed()).as(circuit.id().value()).isFalse();
                assertThat(unread.cut().allowed()).as(circuit.id().value()).isFalse();
                assertThat(unread.next()).as(circuit.id().value()).isPresent();
                assertThat(text(unread.connect().lacks())).contains("nothing is joined by a paper alone");
            }
            WireFinding read = identifier.identify(readings("""
                            constant,no key,12.6,V,12.6
                            constant,key off,12.6,V,12.6
                            constant,key acc,12.5,V,12.5
                            constant,key on,12.3,V,12.3
                            constant,cranking,10.2,V,10.3,min/max
                            constant,asleep,12.6,V,12.6
                            """)).getFirst();
            assertThat(read.connect().allowed())
                    .as(text(read.connect().lacks()))
                    .isTrue();
        }
    }

    /** The same sheet as a paper has it that nobody has checked. */
    private static Sheet stated(Sheet sheet) {
        return new Sheet(
                sheet.vehicle(),
                sheet.operables(),
                sheet.circuits().stream()
                        .map(c -> new Circuit(
                                c.id(),
                                c.role(),
                                c.where(),
                                c.colour(),
                                c.size(),
                                c.switching(),
                                c.follows(),
                                c.paths(),
                                c.access(),
                                Figured.STATED,
                                c.origin(),
                                c.note()))
                        .toList());
    }

    @Test
    void whatBelongsToTheRestraintsIsLeftAloneTheMeterIncluded() {
        WireFinding yellow = one("w,key off,not taken,V,,,column,YE,yellow sleeve\n");
        assertThat(yellow.next()).isEmpty();
        assertThat(yellow.connect().allowed()).isFalse();
        assertThat(text(yellow.cautions())).contains("leave this wire alone");
    }

    @Test
    void messagesAreMeasuredWithAVoltmeterAlone() {
        WireFinding data = one("w,key on,2.61,V,12.3\nw,key off,2.4..2.8,V,12.6\nw,key on,AC 0.4,V,12.3\n");
        assertThat(data.best()).isEqualTo(WireRole.DATA);
        assertThat(data.connect().allowed()).isFalse();
        data.next()
                .ifPresent(
                        next -> assertThat(next.test().kind()).isIn(MeterTest.Kind.VOLTS, MeterTest.Kind.ALTERNATING));
    }

    @Test
    void aWireHeldByResistanceIsOfferedTheGuidedStep() {
        String buttons = """
                w,key off,5.02,V,12.6
                w,pressed lock,0.91,V,12.6
                w,pressed unlock,2.51,V,12.6
                """;
        WireFinding found = one(buttons);
        assertThat(found.best()).isEqualTo(WireRole.LOCK_STEPS);
        assertThat(found.next().orElseThrow().test()).isEqualTo(MeterTest.LOADED);
        assertThat(one(buttons + "w,with 1 kohm,2.50,V,12.6\n").steps()).isPresent();
    }

    /** Random volts at random steps: hardly ever a confident answer, and never one to cut by. */
    @Test
    void garbageGivesNoConfidentAnswer() {
        Random random = new Random(Sample.seed());
        List<String> steps = List.of(
                "key off",
                "key acc",
                "key on",
                "cranking",
                "running",
                "lamps on",
                "opened door",
                "pressed lock",
                "pressed unlock",
                "pressed horn",
                "pressed brake",
                "opened trunk");
        int confident = 0;
        int rounds = Sample.count(40, 400);
        for (int round = 0; round < rounds; round++) {
            StringBuilder lines = new StringBuilder();
            for (String step : steps) {
                lines.append("w,%s,%.2f,V,12.4%n".formatted(step, 13 * random.nextDouble()));
            }
            WireFinding found = one(lines.toString());
            boolean joined = found.connect().allowed();
            confident += joined ? 1 : 0;
            assertThat(found.cut().allowed()).isFalse();
        }
        assertThat(confident).isLessThanOrEqualTo(rounds / 50);
    }

    @Test
    void nothingReadIsNothingKnown() {
        WireFinding none = one("w,key on,not taken,V\n");
        assertThat(none.readings()).isZero();
        assertThat(none.connect().allowed()).isFalse();
        assertThat(none.next().orElseThrow().test().step().key()).isIn(KeyAt.OFF, KeyAt.ON);
    }
}
