package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Changed;
import org.loomproof.workshop.planner.Planned;
import org.loomproof.workshop.quantity.Volts;

/** Openings are read straight, by diodes, by an inverting relay, or by an added pin; never by a guess. */
class OpeningsRuleTest {

    @Test
    void aNegativeDoorWireGoesStraightOnANegativeInput() {
        Planned planned = Planned.of(Jobs.handcart(), AKit.simple(), watching("driver-door"));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.straight");
        planned.wire("lead trigger", "circuit dome tap");
    }

    @Test
    void oneWireForAllDoorsNeedsNoDiodes() {
        AVehicle car = basics().door("left")
                .door("right")
                .withNegativeTrigger("dome", CircuitRole.DOOR_TRIGGER, 10, "left", "right")
                .withNegativeTrigger("left-lamp", CircuitRole.DOOR_TRIGGER, 5, "left");
        Planned planned = Planned.of(car, AKit.simple(), watching("left", "right"));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.straight");
        assertThat(planned.connect("trigger").circuits()).map(Object::toString).containsExactly("dome");
    }

    @Test
    void aWireForEachDoorGetsADiodeEachWithTheBandTowardsTheDoor() {
        AVehicle car = basics().door("left")
                .door("right")
                .withNegativeTrigger("left-lamp", CircuitRole.DOOR_TRIGGER, 5, "left")
                .withNegativeTrigger("right-lamp", CircuitRole.DOOR_TRIGGER, 5, "right");
        Planned planned = Planned.of(car, AKit.simple(), watching("left", "right"));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.isolation-diodes");
        assertThat(planned.listParts(AddedPart.Diode.class)).hasSize(2);
        planned.wire("lead trigger", "D1 A");
        planned.wire("D1 A", "D2 A");
        planned.wire("D1 K", "circuit left-lamp tap");
        planned.wire("D2 K", "circuit right-lamp tap");
    }

    @Test
    void diodesForAPositiveInputAreTheOtherWayRound() {
        AVehicle car = basics().door("left").door("right");
        car.withPositiveTrigger("left-feed", CircuitRole.DOOR_TRIGGER, 10, "left");
        car.withPositiveTrigger("right-feed", CircuitRole.DOOR_TRIGGER, 10, "right");
        AKit kit = fed().triggerHigh("trigger", LeadRole.DOOR_INPUT);
        Planned planned = Planned.of(car, kit, watching("left", "right"));

        planned.wire("lead trigger", "D1 K");
        planned.wire("D1 A", "circuit left-feed tap");
    }

    @Test
    void ofTwoInputsTheOneThatNoDoorNeedsIsTrimmed() {
        AKit kit = AKit.simple().triggerHigh("positive", LeadRole.DOOR_INPUT);
        Planned planned = Planned.of(Jobs.handcart(), kit, watching("driver-door"));

        assertThat(planned.decision("trigger")).isEqualTo("connect");
        assertThat(planned.decision("positive")).isEqualTo("trim");
    }

    @Test
    void aPositiveDoorWireWithALampBearsTheCoilOfAnInvertingRelay() {
        AVehicle car = basics().door("left");
        car.withPositiveTrigger("left-feed", CircuitRole.DOOR_TRIGGER, 10, "left");
        Planned planned = Planned.of(car, AKit.simple(), watching("left"));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.inverting-relay");
        planned.wire("K1 86", "circuit left-feed tap");
        planned.wire("K1 85", "body");
        planned.wire("K1 87", "body");
        planned.wire("lead trigger", "K1 30");
    }

    @Test
    void aNegativeDoorWireWithALampBearsTheCoilForAPositiveInput() {
        AKit kit = fed().triggerHigh("trigger", LeadRole.DOOR_INPUT);
        Planned planned = Planned.of(Jobs.handcart(), kit, watching("driver-door"));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.inverting-relay");
        planned.wire("K1 85", "circuit dome tap");
        planned.wire("FU2 2", "K1 86");
        planned.wire("K1 86", "K1 87");
        planned.wire("circuit constant tap", "FU2 1");
    }

    @Test
    void aDoorWireThatOnlyCarriesASignalBearsNoCoilAndIsReadThroughABuffer() {
        // A 1 W lamp carries 14.8 V · 1 W / 144 V² = 0.1 A; a coil of 85 Ω wants 0.174 A.
        AVehicle car = basics().door("left");
        car.withPositiveTrigger("left-feed", CircuitRole.DOOR_TRIGGER, 1, "left");
        Planned planned = Planned.of(car, AKit.simple(), watching("left"));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.reading-buffer");
        planned.wire("Q1 in", "circuit left-feed tap");
        planned.wire("lead trigger", "Q1 out");
    }

    @Test
    void doorsOfBothPolaritiesOnOneInputGetADiodeAndARelay() {
        AVehicle car = basics().door("left").door("right");
        car.withNegativeTrigger("left-lamp", CircuitRole.DOOR_TRIGGER, 10, "left");
        car.withPositiveTrigger("right-feed", CircuitRole.DOOR_TRIGGER, 10, "right");
        Planned planned = Planned.of(car, AKit.simple(), watching("left", "right"));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.diodes-and-inverting-relay");
        planned.wire("D1 K", "circuit left-lamp tap");
        planned.wire("K1 86", "circuit right-feed tap");
    }

    @Test
    void aHoodWithoutAFactorySwitchGetsAPin() {
        AVehicle car = Jobs.handcart().opening("hood", Operable.Kind.HOOD);
        AKit kit = AKit.simple().triggerLow("hood-lead", LeadRole.HOOD_INPUT);
        Planned planned = Planned.of(car, kit, watching("driver-door", "hood"));

        assertThat(planned.coupling("hood-lead")).isEqualTo("coupling.added-pin");
        planned.wire("lead hood-lead", "S1 1");
        assertThat(planned.only(AddedPart.PinSwitch.class).opening()).hasToString("hood");
        assertThat(planned.cautionKeys()).contains("caution.pin-place");
    }

    @Test
    void aKitWithoutAHoodInputReadsTheHoodWithTheDoors() {
        AVehicle car = Jobs.handcart().opening("hood", Operable.Kind.HOOD);
        Planned planned = Planned.of(car, AKit.simple(), watching("driver-door", "hood"));

        // The pin has no factory function and needs no diode; the door's lamp does.
        planned.wire("D1 K", "circuit dome tap");
        planned.wire("D1 A", "S1 1");
        assertThat(planned.listParts(AddedPart.Diode.class)).hasSize(1);
    }

    @Test
    void aDoorThatNoWireShowsWaitsForOne() {
        AVehicle car = Jobs.handcart().door("rear-door");
        Planned planned = Planned.of(car, AKit.simple(), watching("driver-door", "rear-door"));

        assertThat(planned.decision("trigger")).isEqualTo("find trigger-of rear-door");
    }

    @Test
    void aWireThatContradictsItselfIsReadFirst() {
        Planned planned =
                Planned.of(Changed.switching(brief(), "dome", new Switching(new Level.Ground(), new Level.Ground())));

        assertThat(planned.decision("trigger")).isEqualTo("levels-of dome");
    }

    @Test
    void aGuessedSignalWireIsTappedButReadBefore() {
        Planned planned = Planned.of(Changed.certainty(brief(), "dome", Certainty.GUESSED));

        assertThat(planned.decision("trigger")).isEqualTo("connect");
        assertThat(planned.cautionKeys()).contains("caution.guessed-tap");
    }

    @Test
    void aDoorOnADataWireIsNotTouchedAndGetsAPin() {
        Planned planned =
                Planned.of(Changed.switching(brief(), "dome", new Switching(new Level.Data(), new Level.Data())));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.added-pin");
        assertThat(planned.wires()).noneMatch(w -> w.contains("dome"));
    }

    @Test
    void aWireHeldAtFiveVoltsIsOfferedStraightBehindADiodeOrAResistorAndWithAPinInItsPlace() {
        AVehicle car = basics().opening("hood", Operable.Kind.HOOD);
        car.circuit(
                "hood-line",
                CircuitRole.HOOD_TRIGGER,
                new Level.Voltage(new Volts(5)),
                new Level.Ground(),
                List.of("hood"),
                Access.MAY_BE_TAPPED,
                List.of(
                        Steps.supply(),
                        Steps.resistor("pull", 2200),
                        Steps.here(),
                        Steps.pinSwitch("pin", "hood"),
                        Steps.ground()));
        AKit kit = fed().triggerLow("hood-lead", LeadRole.HOOD_INPUT);
        Planned planned = Planned.of(car, kit, watching("hood"));

        List<Plan> plans = planned.candidates().plans();
        assertThat(plans).hasSize(4);
        assertThat(planned.coupling("hood-lead")).isEqualTo("coupling.straight");
        assertThat(plans.get(1).parts()).anyMatch(AddedPart.Diode.class::isInstance);
        assertThat(plans.get(2).parts()).anyMatch(AddedPart.Resistor.class::isInstance);
        assertThat(plans.get(3).parts()).anyMatch(AddedPart.PinSwitch.class::isInstance);
    }

    @Test
    void aContactThatOpensWithItsDoorIsLiftedByAResistor() {
        // At 9 V a volt over the threshold of 5 V: at most 10 kΩ · (9 / 6 − 1) = 5 kΩ, less 5 %: 4.7 kΩ of the
        // preferred values.
        AVehicle car = basics().door("left");
        car.circuit(
                "latch",
                CircuitRole.DOOR_TRIGGER,
                new Level.Ground(),
                new Level.Open(),
                List.of("left"),
                Access.MAY_BE_TAPPED,
                List.of(Steps.here(), Steps.ground()));
        AKit kit = fed().triggerHigh("trigger", LeadRole.DOOR_INPUT);
        Planned planned = Planned.of(car, kit, watching("left"));

        assertThat(planned.coupling("trigger")).isEqualTo("coupling.pull-up");
        assertThat(planned.only(AddedPart.Resistor.class).resistance().value()).isEqualTo(4700);
        assertThat(planned.cautionKeys()).contains("caution.pull-up-drain");
        planned.wire("R1 2", "circuit latch tap");
        planned.wire("lead trigger", "circuit latch tap");
    }

    @Test
    void aLightThatSomethingElseWorksIsNotTakenForItsDoor() {
        AVehicle car = basics().door("left").control("timer", "dark", "lit");
        car.circuit(
                "dome",
                CircuitRole.DOOR_TRIGGER,
                new Level.Supply(),
                new Level.Ground(),
                List.of("left"),
                Access.MAY_BE_TAPPED,
                List.of(Steps.supply(), Steps.here(), Steps.contact("timer-contact", "timer", "lit"), Steps.ground()));

        assertThat(Planned.of(car, AKit.simple(), watching("left")).decision("trigger"))
                .isEqualTo("pin-side-of dome");
    }

    @Test
    void nothingToWatchAtTheTrunkOfACarWithoutOneTrimsItsInput() {
        AKit kit = AKit.simple().triggerLow("trunk-lead", LeadRole.TRUNK_INPUT);

        assertThat(Planned.of(Jobs.handcart(), kit, watching("driver-door")).decision("trunk-lead"))
                .isEqualTo("trim");
        assertThat(Planned.of(
                                Jobs.handcart().opening("trunk", Operable.Kind.TRUNK),
                                AKit.simple().triggerLow("trunk-lead", LeadRole.TRUNK_INPUT),
                                watching("driver-door"))
                        .decision("trunk-lead"))
                .isEqualTo("cap");
    }

    @Test
    void aKitWithoutTriggersRefusesToWatch() {
        Planned planned = Planned.of(Jobs.handcart(), fed(), watching("driver-door"));

        assertThat(planned.refusal(Wish.WATCH_OPENINGS)).contains("refuse.nothing-for-it");
    }

    private static Brief brief() {
        return new Brief(
                Jobs.handcart().sheet(),
                AKit.simple().kit(),
                watching("driver-door").order());
    }

    private static AnOrder watching(String... openings) {
        return AnOrder.forWishes().watching(openings);
    }

    private static AVehicle basics() {
        return AVehicle.named("cart").withConstantSupply("constant", 20).withIgnition("ignition");
    }

    private static AKit fed() {
        return AKit.named("kit").supply("supply").ground("ground");
    }
}
