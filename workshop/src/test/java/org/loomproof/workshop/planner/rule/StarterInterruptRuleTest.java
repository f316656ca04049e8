package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.planner.Changed;
import org.loomproof.workshop.planner.Planned;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;

/** The starter interrupt: break contact in the starter wire, coil on the fused ignition, output to ground while armed. */
class StarterInterruptRuleTest {

    private static final AnOrder INTERRUPT = AnOrder.forWishes(Wish.STARTER_INTERRUPT);

    @Test
    void aStarterOfTenAmpsIsCutWithTheBreakContactAndTheCoilHangsOnTheFusedIgnition() {
        Planned planned = Planned.of(Jobs.handcart(), AKit.simple(), INTERRUPT);

        assertThat(planned.coupling("interrupt")).isEqualTo("coupling.break-contact");
        AddedPart.Relay relay = planned.only(AddedPart.Relay.class);
        // 14.8 V over 1.2 Ω and 20 mΩ of contact and wire is 12.1 A.
        assertThat(relay.breakRating().value()).isGreaterThanOrEqualTo(12.1);
        planned.wire("circuit starter before", "K1 30");
        planned.wire("K1 87a", "circuit starter after");
        planned.wire("circuit ignition tap", "FU2 1");
        planned.wire("FU2 2", "K1 86");
        planned.wire("lead interrupt", "K1 85");
        planned.wire("D1 A", "K1 85");
        planned.wire("D1 K", "K1 86");
        assertThat(planned.wires()).noneMatch(w -> w.contains("K1 87 "));
    }

    @Test
    void theFuseOfTheCoilIsSmallAndSitsNearTheTakeOff() {
        Planned planned = Planned.of(Jobs.handcart(), AKit.simple(), INTERRUPT);

        AddedPart.Fuse fuse = (AddedPart.Fuse) planned.part("FU2");
        assertThat(fuse.rating().value()).isEqualTo(2);
        // A fuse stands within 300 mm of where the feed is taken: common practice, no published source.
        assertThat(planned.wire("circuit ignition tap", "FU2 1").length().value())
                .isLessThanOrEqualTo(0.3);
    }

    @Test
    void theRelayInTheBoxIsTakenWhenItsBreakContactBearsTheStarter() {
        AKit kit = AKit.simple().extra(boxedRelay(40, 30));
        Planned planned = Planned.of(Jobs.handcart(), kit, INTERRUPT);

        assertThat(planned.only(AddedPart.Relay.class).breakRating().value()).isEqualTo(30);
        assertThat(planned.reason("interrupt")).contains("boxed relay");
    }

    @Test
    void aBoxedRelayOfTenAmpsIsPassedOverForABiggerOneAndTheReasonIsKept() {
        AKit kit = AKit.simple().extra(boxedRelay(20, 10));
        Planned planned = Planned.of(Jobs.handcart(), kit, INTERRUPT);

        assertThat(planned.only(AddedPart.Relay.class).breakRating().value()).isGreaterThanOrEqualTo(12.1);
        assertThat(planned.insteadOf("interrupt")).anyMatch(r -> r.contains("boxed relay") && r.contains("10 A"));
    }

    @Test
    void aStarterOfThirtyAmpsTakesTheBiggestRelay() {
        // 14.8 V over 0.45 Ω and 20 mΩ is 31.5 A, and a contact for a solenoid is rated a quarter higher: 39.4 A.
        Planned planned = Planned.of(vehicleWithStarter(0.45), AKit.simple(), INTERRUPT);

        assertThat(planned.only(AddedPart.Relay.class).breakRating().value()).isEqualTo(45);
    }

    @Test
    void aContactThatJustBearsTheSolenoidIsNotEnough() {
        // 14.8 V over 0.35 Ω and 20 mΩ is 40 A: the biggest contact bears 45 A, and 50 A are asked of it.
        Planned planned = Planned.of(vehicleWithStarter(0.35), AKit.simple(), INTERRUPT);

        assertThat(planned.refusal(Wish.STARTER_INTERRUPT)).contains("refuse.interrupt.no-relay");
    }

    @Test
    void aStarterThatNoRelayBreaksIsRefusedAndTheControlWireIsOffered() {
        Planned planned = Planned.of(vehicleWithStarter(0.15), AKit.simple(), INTERRUPT);

        assertThat(planned.refusal(Wish.STARTER_INTERRUPT)).contains("refuse.interrupt.no-relay");
        assertThat(planned.decision("interrupt")).isEqualTo("cap");
        assertThat(planned.told()).contains("control wire of the factory starter relay");
    }

    @Test
    void aStarterWhoseCurrentIsOnlyAssumedWaitsForTheClampMeter() {
        AVehicle vehicle = cartWithStarter(
                Steps.supply(),
                Steps.contact("switch-50", "key", "start"),
                Steps.here(),
                Steps.load(
                        "solenoid", PathStep.LoadKind.SOLENOID, Figured.assumed("solenoid", Ohms::new, 0.15, 0.4, 1.0)),
                Steps.ground());
        Planned planned = Planned.of(vehicle, AKit.simple(), INTERRUPT);

        assertThat(planned.decision("interrupt")).isEqualTo("current-of starter");
    }

    @Test
    void aGuessedStarterWireIsNeverCut() {
        Planned planned = Planned.of(Changed.certainty(brief(), "starter", Certainty.GUESSED));

        assertThat(planned.decision("interrupt")).isEqualTo("levels-of starter");
        assertThat(planned.plan().parts()).noneMatch(AddedPart.Relay.class::isInstance);
    }

    @Test
    void aStarterWireThatMayOnlyBeTappedIsNotCut() {
        Planned planned = Planned.of(Changed.access(brief(), "starter", Access.MAY_BE_TAPPED));

        assertThat(planned.decision("interrupt")).isEqualTo("access-to starter");
    }

    @Test
    void aSheetWithoutAStarterWireHoldsTheLeadUntilItIsFound() {
        AVehicle vehicle =
                AVehicle.named("cart").withConstantSupply("constant", 20).withIgnition("ignition");
        Planned planned = Planned.of(vehicle, AKit.simple(), INTERRUPT);

        assertThat(planned.decision("interrupt")).isEqualTo("find starter");
    }

    @Test
    void twoWiresSaidToBeTheStarterAreToldApartFirst() {
        Planned planned = Planned.of(Jobs.handcart().withStarter("other-starter", 1.2), AKit.simple(), INTERRUPT);

        assertThat(planned.decision("interrupt")).isEqualTo("which-of starter");
    }

    @Test
    void aStarterWireThatItsPathFeedsAtRestContradictsItself() {
        AVehicle vehicle = cartWithStarter(
                Steps.supply(), Steps.fuse("F1", 30), Steps.here(), Steps.solenoid("solenoid", 1), Steps.ground());

        assertThat(Planned.of(vehicle, AKit.simple(), INTERRUPT).decision("interrupt"))
                .isEqualTo("levels-of starter");
    }

    @Test
    void aSecondStarterWireIsCutAsWellAndBothCoilsHangOnOneOutput() {
        AVehicle vehicle = Jobs.handcart()
                .circuit(
                        "starter-2",
                        CircuitRole.SECOND_STARTER,
                        new Level.Ground(),
                        new Level.Supply(),
                        List.of("key"),
                        Access.MAY_BE_CUT,
                        List.of(
                                Steps.supply(),
                                Steps.contact("switch-50b", "key", "start"),
                                Steps.here(),
                                Steps.solenoid("solenoid-2", 2),
                                Steps.ground()));
        Planned planned = Planned.of(vehicle, AKit.simple(), INTERRUPT);

        // Two coils of 85 Ω draw 2 · 14.8 / 85 = 0.348 A of the 0.5 A this output carries.
        assertThat(planned.listParts(AddedPart.Relay.class)).hasSize(2);
        // They are let go together: one diode serves both.
        assertThat(planned.listParts(AddedPart.Diode.class)).hasSize(1);
        planned.wire("circuit starter-2 before", "K2 30");
        planned.wire("K1 85", "K2 85");
    }

    @Test
    void anOutputOfHundredMilliampsWorksTheRelayThroughABufferAndOneOfAMilliampNothing() {
        Planned hundred = Planned.of(Jobs.handcart(), weak(0.1), INTERRUPT);
        Planned one = Planned.of(Jobs.handcart(), weak(0.001), INTERRUPT);

        // The coil draws 14.8 V / 85 Ω = 174 mA, the buffer's input 14.8 V / 10 kΩ = 1.5 mA.
        assertThat(hundred.coupling("interrupt")).isEqualTo("coupling.break-contact-buffered");
        assertThat(hundred.listParts(AddedPart.Buffer.class)).hasSize(1);
        assertThat(one.refusal(Wish.STARTER_INTERRUPT)).contains("refuse.output-too-weak");
    }

    @Test
    void whatTheBufferDoesIsProven() {
        PlannedJob job =
                new Weigher().weigh(new Brief(Jobs.handcart().sheet(), weak(0.1).kit(), INTERRUPT.order()));

        assertThat(job.plan().refusals()).isEmpty();
        assertThat(job.proof().results())
                .isNotEmpty()
                .allMatch(result -> result.verdict() instanceof Verdict.Holds)
                .anyMatch(result -> result.id().startsWith("starts-with-controller-dead"));
    }

    private static AKit weak(double amps) {
        return AKit.named("weak")
                .supply("supply")
                .ground("ground")
                .lowSide("interrupt", LeadRole.STARTER_INTERRUPT, amps, AKit.GUARDING);
    }

    @Test
    void anOutputThatIsOnWhileDisarmedWouldStrandTheDriverAndIsRefused() {
        AKit kit = AKit.named("reversed")
                .supply("supply")
                .ground("ground")
                .lowSide(
                        "interrupt",
                        LeadRole.STARTER_INTERRUPT,
                        0.5,
                        Set.of(ControllerState.DISARMED, ControllerState.ARMED));
        Planned planned = Planned.of(Jobs.handcart(), kit, INTERRUPT);

        assertThat(planned.refusal(Wish.STARTER_INTERRUPT)).contains("refuse.interrupt.no-armed-output");
    }

    @ParameterizedTest
    @EnumSource(value = VehicleFacts.Start.class, names = "KEY", mode = EnumSource.Mode.EXCLUDE)
    void aStartByButtonOrByDataAloneIsRefusedAndTheRestIsStillPlanned(VehicleFacts.Start start) {
        Planned planned = Planned.of(Changed.start(brief(Wish.STARTER_INTERRUPT, Wish.SIREN), start));

        assertThat(planned.refusal(Wish.STARTER_INTERRUPT)).contains("refuse.interrupt.no-key-start");
        assertThat(planned.decision("siren")).isEqualTo("connect");
        assertThat(planned.decision("supply")).isEqualTo("connect");
    }

    @Test
    void aHybridIsNeverCut() {
        Planned planned = Planned.of(Changed.drive(brief(), VehicleFacts.Drive.HYBRID));

        assertThat(planned.refusal(Wish.STARTER_INTERRUPT)).contains("refuse.interrupt.high-voltage");
    }

    @Test
    void nobodyAskedSoTheLeadIsCapped() {
        Planned planned = Planned.of(Jobs.handcart(), AKit.simple(), AnOrder.forWishes(Wish.SIREN));

        assertThat(planned.decision("interrupt")).isEqualTo("cap");
        assertThat(planned.refusal(Wish.STARTER_INTERRUPT)).isEmpty();
    }

    private static Brief brief(Wish... wishes) {
        Wish[] all = wishes.length == 0 ? new Wish[] {Wish.STARTER_INTERRUPT} : wishes;
        return new Brief(
                Jobs.handcart().sheet(),
                AKit.simple().kit(),
                AnOrder.forWishes(all).order());
    }

    private static AVehicle vehicleWithStarter(double ohms) {
        return AVehicle.named("cart")
                .withConstantSupply("constant", 20)
                .withIgnition("ignition")
                .withStarter("starter", ohms);
    }

    private static Extra boxedRelay(double makeAmps, double breakAmps) {
        return new Extra(
                "boxed relay",
                Extra.Kind.INTERRUPT_RELAY,
                Optional.empty(),
                Optional.of(Figured.ohms(85)),
                Optional.of(Figured.amps(makeAmps)),
                Optional.of(Figured.amps(breakAmps)));
    }

    /** A cart whose starter wire goes from ground to supply along that path. */
    private static AVehicle cartWithStarter(PathStep... path) {
        return AVehicle.named("cart")
                .withConstantSupply("constant", 20)
                .withIgnition("ignition")
                .circuit(
                        "starter",
                        CircuitRole.STARTER,
                        new Level.Ground(),
                        new Level.Supply(),
                        List.of("key"),
                        Access.MAY_BE_CUT,
                        List.of(path));
    }
}
