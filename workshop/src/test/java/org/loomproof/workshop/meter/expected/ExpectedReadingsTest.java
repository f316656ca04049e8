package org.loomproof.workshop.meter.expected;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.words.Messages;

class ExpectedReadingsTest {

    private static final Jobs.Job CART = Jobs.simple();
    private static final List<CircuitReadings> READINGS = ExpectedReadings.of(CART.brief(), CART.plan());

    private static CircuitReadings at(String circuit) {
        return READINGS.stream()
                .filter(r -> r.circuit().equals(new CircuitId(circuit)))
                .findFirst()
                .orElseThrow();
    }

    private static ExpectedReading with(List<ExpectedReading> readings, String operable, String position) {
        return readings.stream()
                .filter(r -> position.equals(r.when().positions().get(new OperableId(operable))))
                .filter(r -> !position.equals("off") || isAtRest(r))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isAtRest(ExpectedReading reading) {
        return reading.when().positions().values().stream()
                .allMatch(p -> List.of("off", "closed", "rest").contains(p));
    }

    private static List<ExpectedReading> end(String circuit, Touch.End end) {
        return at(circuit).cut().stream().filter(r -> r.at().end() == end).toList();
    }

    /** Common practice, no published source. */
    @Test
    void aConstantShowsTheBatteryInEveryPositionOfTheKey() {
        assertThat(at("constant").whole()).hasSize(4);
        assertThat(at("constant").whole()).allSatisfy(r -> {
            assertThat(r.band().low(12.6)).isCloseTo(12.6, within(0.15));
            assertThat(r.band().high(9.0)).isCloseTo(9.0, within(0.15));
        });
    }

    /** Common practice, no published source. */
    @Test
    void aTrueIgnitionShowsTheBatteryWithTheKeyOnAndWhileCranking() {
        List<ExpectedReading> ignition = at("ignition").whole();
        assertThat(with(ignition, "key", "off").band().high(12.6)).isLessThan(0.1);
        assertThat(with(ignition, "key", "accessory").band().high(12.6)).isLessThan(0.1);
        assertThat(with(ignition, "key", "on").band().low(12.6)).isGreaterThan(12.3);
        ExpectedReading cranking = with(ignition, "key", "start");
        assertThat(cranking.isCranking()).isTrue();
        assertThat(cranking.batteryVolts()).isEqualTo(9.0);
        assertThat(cranking.band().low(9.0)).isGreaterThan(8.7);
    }

    /** 10 V at the post, 5 Ω behind 30 A fuse, switch and 10 mΩ of wire: by hand, the drop over them all. */
    @Test
    void whatAReadingLosesIsWhatItsWayCosts() {
        VoltsBand on = with(at("ignition").whole(), "key", "on").band();
        double fuse = 0.0026;
        double contact = 0.02;
        double wire = 0.010;
        double byHand = 10 * 5 / (5 + fuse + contact + wire);
        assertThat(on.highAt10()).isCloseTo(byHand, within(0.03));
        assertThat(on.highAt14()).isCloseTo(1.4 * byHand, within(0.04));
    }

    /** Common practice, no published source: after the cut the one end is the key's, the other the solenoid's. */
    @Test
    void theEndsOfACutStarterWireTellThemselvesApart() {
        List<ExpectedReading> toTheSwitch = end("starter", Touch.End.BEFORE_CUT);
        List<ExpectedReading> toTheSolenoid = end("starter", Touch.End.AFTER_CUT);
        assertThat(with(toTheSwitch, "key", "off").floats()).isTrue();
        assertThat(with(toTheSwitch, "key", "start").band().low(9.0)).isGreaterThan(8.8);
        assertThat(toTheSolenoid).hasSize(4).allSatisfy(r -> {
            assertThat(r.floats()).isFalse();
            assertThat(r.band().high(12.6)).isLessThan(0.1);
        });
    }

    @Test
    void aDoorWireFallsWhenItsDoorOpens() {
        List<ExpectedReading> dome = at("dome").whole();
        assertThat(with(dome, "driver-door", "closed").band().low(12.6)).isGreaterThan(12.4);
        assertThat(with(dome, "driver-door", "open").band().high(12.6)).isLessThan(0.3);
    }

    /** A second door on a lamp of its own answers in the same way at every step the first is tried in, but not to its door. */
    @Test
    void aLookAlikeIsNamedWithTheStepThatSplitsThem() {
        Kit kit = AKit.simple().kit();
        Brief brief = new Brief(
                Jobs.handcart()
                        .withConstantSupply("clock", 10)
                        .door("rear-door")
                        .withNegativeTrigger("rear", CircuitRole.DOOR_TRIGGER, 10, "rear-door")
                        .sheet(),
                kit,
                AnOrder.forWishes(Wish.STARTER_INTERRUPT, Wish.SIREN)
                        .watching("driver-door")
                        .order());
        CircuitReadings constant = ExpectedReadings.of(brief, CART.plan()).stream()
                .filter(r -> r.circuit().value().equals("constant"))
                .findFirst()
                .orElseThrow();
        assertThat(constant.alike()).extracting(l -> l.other().value()).containsExactly("dome", "clock", "rear");
        LookAlike dome = constant.alike().getFirst();
        assertThat(dome.split()).hasValueSatisfying(split -> {
            assertThat(split.when().positions()).containsEntry(new OperableId("driver-door"), "open");
            assertThat(split.band().low(12.6)).isGreaterThan(12.3);
        });
        assertThat(constant.alike().get(1).split())
                .as("two constants are one to a meter")
                .isEmpty();
    }

    @Test
    void theWordsSpeakOfTheBatteryOfThatMoment() {
        Messages words = Messages.english();
        ReadingWords reading = new ReadingWords(CART.brief());
        ExpectedReading on = with(at("ignition").whole(), "key", "start");
        assertThat(words.text(reading.when(on))).isEqualTo("turn the key to start");
        assertThat(words.text(ReadingWords.shows(on))).matches("the battery's volts, at most 0\\.\\d V less");
        assertThat(words.text(ReadingWords.shows(with(end("starter", Touch.End.BEFORE_CUT), "key", "off"))))
                .startsWith("nothing holds it");
        assertThat(words.text(ReadingWords.shows(with(at("ignition").whole(), "key", "off"))))
                .startsWith("0 V");
    }
}
