package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.planner.Planned;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/** Outputs: straight where pole and current allow, otherwise by relay; locks both ways or not at all. */
class OutputRulesTest {

    private static final Set<ControllerState> SOUNDING = Set.of(ControllerState.SOUNDING);

    /** An 80 Ω lock relay coil draws 14.8 / 80 = 185 mA: four fifths of 250 mA bear it, four fifths of 200 mA do not. */
    @ParameterizedTest
    @CsvSource({"0.25, coupling.straight", "0.2, coupling.relay"})
    void aNegativeLockPulseIsDirectUpToFourFifthsOfTheOutputsRating(double rating, String coupling) {
        Planned planned = Planned.of(
                carWithLocks(80),
                fed().lowSide("lock", LeadRole.LOCK, rating, SOUNDING)
                        .lowSide("unlock", LeadRole.UNLOCK, rating, SOUNDING),
                AnOrder.forWishes(Wish.LOCKS));

        assertThat(planned.coupling("lock")).isEqualTo(coupling);
        assertThat(planned.coupling("unlock")).isEqualTo(coupling);
    }

    @Test
    void twoLockRelaysHangTheirCoilsBehindOneFuse() {
        Planned planned = Planned.of(
                carWithLocks(80),
                fed().lowSide("lock", LeadRole.LOCK, 0.2, SOUNDING).lowSide("unlock", LeadRole.UNLOCK, 0.2, SOUNDING),
                AnOrder.forWishes(Wish.LOCKS));

        assertThat(planned.listParts(AddedPart.Relay.class)).hasSize(2);
        planned.wire("FU2 2", "K1 86");
        planned.wire("FU2 2", "K2 86");
        planned.wire("K1 30", "circuit lock-wire tap");
        planned.wire("K1 87", "body");
        planned.wire("D1 A", "K1 85");
        planned.wire("D2 A", "K2 85");
    }

    @Test
    void aLockMotorLegByItselfPutsBothLeadsOnHoldUntilTheLegsAreToldApart() {
        AVehicle car = basics().control("lock-switch", "rest", "lock", "unlock");
        car.circuit(
                "leg",
                CircuitRole.LOCK_MOTOR_LEG,
                new Level.Ground(),
                new Level.Reversing(),
                List.of("lock-switch"),
                Access.MAY_BE_CUT,
                List.of(Steps.supply(), Steps.here(), Steps.resistor("motor", 3), Steps.ground()));
        Planned planned = Planned.of(
                car,
                fed().lowSide("lock", LeadRole.LOCK, 0.5, SOUNDING).lowSide("unlock", LeadRole.UNLOCK, 0.5, SOUNDING),
                AnOrder.forWishes(Wish.LOCKS));

        assertThat(planned.decision("lock")).isEqualTo("legs-of locks");
        assertThat(planned.decision("unlock")).isEqualTo("legs-of locks");
        assertThat(planned.told()).contains("plug apart and together");
    }

    @Test
    void aSteppedLockWireOfWhichNotEverythingIsSaidPutsBothLeadsOnHold() {
        AVehicle car = carWithLocks(80);
        AVehicle stepped = basics().control("lock-switch", "rest", "lock", "unlock");
        stepped.circuit(
                "lock-wire",
                CircuitRole.LOCK,
                new Level.Supply(),
                new Level.Resistance(new Ohms(820)),
                List.of("lock-switch"),
                Access.MAY_BE_TAPPED,
                List.of(Steps.supply(), Steps.resistor("pull", 1000), Steps.here()));
        AKit kit =
                fed().lowSide("lock", LeadRole.LOCK, 0.5, SOUNDING).lowSide("unlock", LeadRole.UNLOCK, 0.5, SOUNDING);

        Planned onHold = Planned.of(stepped, kit, AnOrder.forWishes(Wish.LOCKS));
        assertThat(onHold.decision("lock")).isEqualTo("steps-of lock-wire");
        assertThat(onHold.decision("unlock")).isEqualTo("steps-of lock-wire");
        assertThat(onHold.told()).contains("what pulls it up");
        assertThat(Planned.of(car, kit, AnOrder.forWishes(Wish.LOCKS)).refusal(Wish.LOCKS))
                .isEmpty();
    }

    @Test
    void parkingLampsHangStraightOnAHighSideOutputThatBearsThem() {
        Planned planned = Planned.of(
                carWithLamps(30), fed().highSide("lamps", LeadRole.LAMPS, 10, SOUNDING), AnOrder.forWishes(Wish.LAMPS));

        assertThat(planned.coupling("lamps")).isEqualTo("coupling.straight");
        // 30 W of lamps at 14.8 V: 3.1 A by the resistance at 12 V; the supply fuse carries them too, times 4/3.
        assertThat(((AddedPart.Fuse) planned.part("FU1")).rating().value()).isGreaterThanOrEqualTo(3.1 * 4 / 3);
    }

    @Test
    void parkingLampsGoByRelayFromALowSideOutputAndTheWireBehindTheFuseBearsTheFuse() {
        Planned planned = Planned.of(
                carWithLamps(40),
                fed().lowSide("lamps", LeadRole.LAMPS, 0.25, SOUNDING),
                AnOrder.forWishes(Wish.LAMPS));

        assertThat(planned.coupling("lamps")).isEqualTo("coupling.relay");
        planned.wire("K1 87", "K1 86");
        AddedPart.Fuse fuse = (AddedPart.Fuse) planned.part("FU2");
        // Common practice, no published source: 1.5 mm² bears a 15 A fuse, 1 mm² a 10 A fuse.
        double least = fuse.rating().value() > 10 ? 1.5 : 1.0;
        assertThat(planned.wire("FU2 2", "K1 87").size().value()).isGreaterThanOrEqualTo(least);
        assertThat(planned.wire("K1 30", "circuit parking tap").size().value()).isGreaterThanOrEqualTo(least);
    }

    @Test
    void leftAndRightLampsOnOneOutputGetADiodeEach() {
        AVehicle car = basics().control("light-switch", "off", "side")
                .withParkingLamps("left", "light-switch", "side", 15)
                .withParkingLamps("right", "light-switch", "side", 15);
        Planned planned =
                Planned.of(car, fed().highSide("lamps", LeadRole.LAMPS, 10, SOUNDING), AnOrder.forWishes(Wish.LAMPS));

        assertThat(planned.coupling("lamps")).isEqualTo("coupling.isolation-diodes");
        planned.wire("lead lamps", "D1 A");
        planned.wire("D1 K", "circuit left tap");
        // 15 W at 14.8 V is 1.5 A: a 1 A diode does not do.
        assertThat(planned.listParts(AddedPart.Diode.class))
                .allMatch(d -> d.rating().value() >= 1.5);
    }

    @Test
    void leftAndRightLampsEachGetAnOutputOfTheirOwnWhenTheKitHasTwo() {
        AVehicle car = basics().control("light-switch", "off", "side")
                .withParkingLamps("left", "light-switch", "side", 15)
                .withParkingLamps("right", "light-switch", "side", 15);
        AKit kit =
                fed().highSide("lamps-1", LeadRole.LAMPS, 5, SOUNDING).highSide("lamps-2", LeadRole.LAMPS, 5, SOUNDING);
        Planned planned = Planned.of(car, kit, AnOrder.forWishes(Wish.LAMPS));

        planned.wire("lead lamps-1", "circuit left tap");
        planned.wire("lead lamps-2", "circuit right tap");
        assertThat(planned.listParts(AddedPart.Diode.class)).isEmpty();
    }

    @Test
    void anOutputWithABodyDiodeIsAlsoOfferedWithDiodesThatLetNothingFlowBack() {
        AKit kit = fed().lowSide("horn", LeadRole.HORN, 0.5, SOUNDING);
        Planned planned = Planned.of(carWithHorn(), kit, AnOrder.forWishes(Wish.HORN));

        List<String> ways = planned.candidates().plans().stream()
                .map(p -> ((Hookup.Connect) p.hookups().getLast()).coupling())
                .toList();
        assertThat(ways)
                .containsExactly(
                        "coupling.straight",
                        "coupling.straight-clamped",
                        "coupling.isolation-diodes",
                        "coupling.relay",
                        "coupling.relay-isolated",
                        "coupling.buffer",
                        "coupling.composed",
                        "coupling.buffered-relay");
    }

    @Test
    void aStepBehindAnOutputWithDiodesInsideIsGivenByADryContact() {
        AKit kit = fed().lowSide("horn", LeadRole.HORN, 0.5, SOUNDING);
        Planned planned = Planned.of(carWithWheelButtons(), kit, AnOrder.forWishes(Wish.HORN));

        assertThat(planned.coupling("horn")).isEqualTo("coupling.step-resistor-by-relay");
        assertThat(planned.only(AddedPart.Resistor.class).resistance()).isEqualTo(new Ohms(221));
        planned.wire("R1 2", "body");
    }

    @Test
    void lampsThatAModuleWatchesAreNotFedFromOutside() {
        AVehicle car = basics().control("light-switch", "off", "side");
        car.circuit(
                "side",
                CircuitRole.PARKING_LAMP,
                new Level.Ground(),
                new Level.Supply(),
                List.of("light-switch"),
                Access.MAY_BE_TAPPED,
                List.of(Steps.here(), wheelInput()));
        AKit kit = fed().highSide("lamps", LeadRole.LAMPS, 5, SOUNDING);

        assertThat(Planned.of(car, kit, AnOrder.forWishes(Wish.LAMPS)).refusal(Wish.LAMPS))
                .contains("refuse.outage-watch");
    }

    private static PathStep.Input wheelInput() {
        return new PathStep.Input(
                new ElementId("module"),
                Optional.of(Figured.ohms(1000)),
                Optional.of(Figured.volts(5)),
                Optional.empty(),
                Figured.volts(1.2),
                Figured.volts(2));
    }

    private static AVehicle carWithWheelButtons() {
        AVehicle car = basics().control("horn-button", "rest", "pressed");
        car.circuit(
                "wheel",
                CircuitRole.HORN,
                new Level.Voltage(new Volts(5)),
                new Level.Resistance(new Ohms(220)),
                List.of("horn-button"),
                Access.MAY_BE_TAPPED,
                List.of(Steps.here(), wheelInput()));
        return car;
    }

    @Test
    void aHighSideOutputWorksANegativeHornWireThroughAnInvertingRelay() {
        AKit kit = fed().highSide("horn", LeadRole.HORN, 1, SOUNDING);
        Planned planned = Planned.of(carWithHorn(), kit, AnOrder.forWishes(Wish.HORN));

        planned.wire("lead horn", "K1 86");
        planned.wire("K1 85", "body");
        planned.wire("K1 87", "body");
        planned.wire("K1 30", "circuit horn-wire tap");
        planned.wire("D1 K", "K1 86");
    }

    @Test
    void theSirenHasAGroundOfItsOwn() {
        Planned planned = Planned.of(
                basics(),
                withSounder(1.2).highSide("siren", LeadRole.SIREN, 2, SOUNDING),
                AnOrder.forWishes(Wish.SIREN));

        planned.wire("lead siren", "L1 +");
        planned.wire("L1 -", "body");
        assertThat(planned.cautionKeys()).contains("caution.sounder-ears", "caution.sounder-mouth-down");
    }

    @Test
    void aSirenOverTheOutputsRatingGoesByRelay() {
        Planned planned = Planned.of(
                basics(),
                withSounder(1.2).lowSide("siren", LeadRole.SIREN, 0.5, SOUNDING),
                AnOrder.forWishes(Wish.SIREN));

        assertThat(planned.coupling("siren")).isEqualTo("coupling.added-load-by-relay");
        planned.wire("K1 30", "L1 +");
        planned.wire("D1 A", "K1 85");
        // 1.2 A at 12.6 V is 1.41 A at 14.8 V.
        assertThat(planned.insteadOf("siren")).anyMatch(r -> r.contains("1.41 A"));
    }

    @Test
    void aSecondSounderHangsBesideTheFirst() {
        AKit kit = withSounder(0.6).extra(sounder("second", 0.6)).highSide("siren", LeadRole.SIREN, 2, SOUNDING);
        Planned planned = Planned.of(basics(), kit, AnOrder.forWishes(Wish.SIREN, Wish.SECOND_SOUNDER));

        assertThat(planned.listParts(AddedPart.Load.class)).hasSize(2);
        assertThat(planned.plan().refusals()).isEmpty();
    }

    @Test
    void aSecondSounderThatIsNotInTheBoxIsRefusedAlone() {
        AKit kit = withSounder(0.6).highSide("siren", LeadRole.SIREN, 2, SOUNDING);
        Planned planned = Planned.of(basics(), kit, AnOrder.forWishes(Wish.SIREN, Wish.SECOND_SOUNDER));

        assertThat(planned.refusal(Wish.SECOND_SOUNDER)).contains("refuse.no-sounder");
        assertThat(planned.decision("siren")).isEqualTo("connect");
    }

    @Test
    void aMissingHornWireHoldsItsLead() {
        AKit kit = fed().lowSide("horn", LeadRole.HORN, 0.5, SOUNDING);

        assertThat(Planned.of(basics(), kit, AnOrder.forWishes(Wish.HORN)).decision("horn"))
                .isEqualTo("find horn");
    }

    private static AVehicle basics() {
        return AVehicle.named("cart").withConstantSupply("constant", 30).withIgnition("ignition");
    }

    private static AKit fed() {
        return AKit.named("kit").supply("supply").ground("ground");
    }

    private static AKit withSounder(double amps) {
        return fed().extra(sounder("siren", amps));
    }

    private static Extra sounder(String name, double amps) {
        return new Extra(
                name,
                Extra.Kind.SOUNDER,
                Optional.of(Figured.amps(amps)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static AVehicle carWithLamps(double watts) {
        return basics().control("light-switch", "off", "side")
                .withParkingLamps("parking", "light-switch", "side", watts);
    }

    private static AVehicle carWithHorn() {
        AVehicle car = basics().control("horn-button", "rest", "pressed");
        return negative(car, "horn-wire", CircuitRole.HORN, "horn-button", "pressed", 100);
    }

    private static AVehicle carWithLocks(double coilOhms) {
        AVehicle car = basics().control("lock-switch", "rest", "lock", "unlock");
        negative(car, "lock-wire", CircuitRole.LOCK, "lock-switch", "lock", coilOhms);
        return negative(car, "unlock-wire", CircuitRole.UNLOCK, "lock-switch", "unlock", coilOhms);
    }

    /** A relay coil at the supply that a switch grounds. */
    private static AVehicle negative(
            AVehicle car, String id, CircuitRole role, String control, String at, double coilOhms) {
        return car.circuit(
                id,
                role,
                new Level.Supply(),
                new Level.Ground(),
                List.of(control),
                Access.MAY_BE_TAPPED,
                List.of(
                        Steps.supply(),
                        Steps.coil(id + "-coil", id + "-relay", coilOhms),
                        Steps.here(),
                        Steps.contact(id + "-switch", control, at),
                        Steps.ground()));
    }
}
