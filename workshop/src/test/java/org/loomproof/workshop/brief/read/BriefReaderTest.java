package org.loomproof.workshop.brief.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.quantity.Watts;

class BriefReaderTest {

    private static final CircuitId STARTER = new CircuitId("starter");

    private final ReadBrief read = GivenTexts.valid().good();
    private final Sheet sheet = read.brief().sheet();
    private final Kit kit = read.brief().kit();
    private final Order order = read.brief().order();

    @Test
    void howLoudAndHowLongAKitSoundsIsRead() {
        assertThat(kit.extras().stream()
                        .flatMap(e -> e.sound().stream())
                        .map(f -> f.typical().value()))
                .containsExactly(110.0);
        assertThat(kit.behaviour().soundingTime().orElseThrow().typical().value())
                .isEqualTo(28);
    }

    @Test
    void theVehicleSaysWhatItIsAndTheBatteryHowOldItIs() {
        assertThat(sheet.vehicle().name()).isEqualTo("bread van");
        assertThat(sheet.vehicle().systemVoltage()).isEqualTo(new Volts(12));
        assertThat(sheet.vehicle().batteryAgeYears()).contains(3.0);
        assertThat(sheet.vehicle().sleepCurrent().typical().value()).isEqualTo(0.018);
    }

    @Test
    void theKeyComesFirstAmongWhatIsOperated() {
        assertThat(sheet.operables().stream().map(o -> o.id().value()))
                .containsExactly("key", "driver-door", "cargo-door", "hood", "light-switch");
        assertThat(sheet.operable(new OperableId("light-switch")).rest()).isEqualTo("off");
    }

    @Test
    void aColourInWordsAndAGaugeAreHeldInStandardForm() {
        Circuit starter = sheet.circuit(STARTER);
        assertThat(starter.colour().map(Object::toString)).contains("VT/WH");
        // AWG 12 is 3.3088 mm² by the published table of solid copper sizes (docs/sources.md).
        assertThat(starter.size().orElseThrow().typical().value())
                .isCloseTo(3.309, org.assertj.core.data.Offset.offset(0.001));
    }

    @Test
    void thePathOfTheStarterReadsAsItIsWritten() {
        List<PathStep> path = sheet.circuit(STARTER).paths().getFirst();
        assertThat(path.stream().map(step -> step.getClass().getSimpleName()))
                .containsExactly("Point", "Switch", "Here", "Wire", "Load", "Ground");
        PathStep.Switch contact = (PathStep.Switch) path.get(1);
        assertThat(contact.closedAt()).containsExactly("start");
        assertThat(contact.closedResistance().typical()).isEqualTo(new Ohms(0.008));
        assertThat(contact.closedResistance().basis().certainty()).isEqualTo(Certainty.VERIFIED);
        assertThat(contact.closedResistance().basis().place().path())
                .isEqualTo("circuits[starter].path[1].switch.closed-resistance");
        assertThat(((PathStep.Wire) path.get(3)).id().value()).isEqualTo("starter/wire-1");
    }

    @Test
    void aFigureThatIsLeftOutIsTheUsualRangeMarkedAssumedAndNamesTheEntryItStandsInFor() {
        PathStep.Switch pin = (PathStep.Switch)
                sheet.circuit(new CircuitId("doors")).paths().get(1).get(1);
        assertThat(pin.closedResistance().isAssumed()).isTrue();
        assertThat(pin.closedResistance().high()).isEqualTo(new Ohms(0.03));
        assertThat(pin.closedResistance().basis().place().path())
                .isEqualTo("circuits[doors].branches[0][1].switch.closed-resistance");
    }

    @Test
    void aRangeOfThreeHasItsTypicalValueInTheMiddle() {
        PathStep.Lamp lamp = (PathStep.Lamp)
                sheet.circuit(new CircuitId("doors")).paths().getFirst().get(2);
        Figure<Watts> power = lamp.power();
        assertThat(List.of(
                        power.low().value(),
                        power.typical().value(),
                        power.high().value()))
                .containsExactly(8.0, 10.0, 12.0);
    }

    @Test
    void aCircuitThatDoesNotSayHowCurrentRunsHasNoPathYet() {
        Circuit lamps = sheet.circuit(new CircuitId("side-lamps"));
        assertThat(lamps.paths()).isEmpty();
        assertThat(lamps.role()).isEqualTo(CircuitRole.PARKING_LAMP);
        assertThat(lamps.switching().rest()).isEqualTo(new Level.Ground());
        assertThat(lamps.basis().certainty()).isEqualTo(Certainty.GUESSED);
    }

    @Test
    void theKitStatesLeastAndMostSupplyAndWhatEachOutputDoes() {
        assertThat(kit.leastSupply().typical()).isEqualTo(new Volts(8));
        assertThat(kit.mostSupply().typical()).isEqualTo(new Volts(16));
        assertThat(kit.behaviour().isOn(new LeadId("P1-4"), ControllerState.ARMED))
                .isTrue();
        assertThat(kit.behaviour().isOn(new LeadId("P1-4"), ControllerState.DISARMED))
                .isFalse();
        assertThat(kit.behaviour().outputs().getLast().timing()).isEqualTo(OutputTiming.PULSE);
    }

    @Test
    void anInputHasItsThresholdsAndAPullUp() {
        Port.Input input = (Port.Input) kit.lead(new LeadId("P1-3")).port();
        assertThat(input.active()).isEqualTo(Port.Active.LOW);
        assertThat(input.pullUp().orElseThrow().typical()).isEqualTo(new Ohms(10_000));
        assertThat(input.pullDown()).isEqualTo(Optional.empty());
    }

    @Test
    void watchAllMeansEveryOpeningOfTheSheetAndIsAWish() {
        assertThat(order.watched().stream().map(OperableId::value))
                .containsExactly("driver-door", "cargo-door", "hood");
        assertThat(order.wishes()).containsExactly(Wish.WATCH_OPENINGS, Wish.STARTER_INTERRUPT, Wish.SIREN);
        assertThat(order.longestUnusedDays()).isEqualTo(21);
        assertThat(Optional.ofNullable(order.shop().runs().get(STARTER))
                        .map(run -> run.typical().value()))
                .contains(1.2);
    }

    @Test
    void theTextsComeAlongSoThatAPlanCanCarryThem() {
        assertThat(read.sheet().text()).startsWith("format: loomproof sheet 1");
    }
}
