package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.workshop.prover.Proven.proven;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/** Each claim breaks where it should, with the steps that show it in the car. That each holds on a right plan is shown apart. */
class ClaimsTest {

    private static final Jobs.Job HANDCART = Jobs.simple();

    private static Jobs.Job with(APlan plan) {
        return HANDCART.with(plan.forKit(HANDCART.brief().kit()));
    }

    @Nested
    class StartsWhenDisarmed {

        @Test
        void breaksWithTheStarterOnTheMakeContact() {
            Proven proven =
                    proven(HANDCART.with(Altered.rewired(HANDCART.plan(), "W11", "K1 87", "circuit starter after")));
            assertThat(proven.steps("starts-when-disarmed starter-solenoid")).containsExactly("turn the key to start");
        }

        /**
         * Hand-worked: two wires of two metres of 1 mm² at 18.5 mΩ/m add 74 mΩ, relay contact and socket 8 mΩ, to 1.22 Ω; of
         * 14.8 V the solenoid gets 14.8 · 1.2 / 1.302 = 13.64 V where the stock car gave it 14.8 · 1.2 / 1.22 = 14.56 V. Of
         * the 0.92 V between, 0.2 V are allowed.
         */
        @Test
        void breaksWithThinWireByTheVoltsThatOhmsLawTakes() {
            Plan thin = Altered.resized(Altered.resized(HANDCART.plan(), "W10", 2, 1), "W11", 2, 1);
            Verdict.Broken broken = proven(HANDCART.with(thin)).broken("starts-when-disarmed starter-solenoid");
            assertThat(broken.worst().slack()).isCloseTo(-0.72, within(0.01));
        }
    }

    @Nested
    class StartsWithControllerDead {

        /** Fail-secure: the relay must be pulled in for the engine to start, so a dead controller means a dead car. */
        @Test
        void breaksWhenOnlyALivingControllerLetsTheEngineStart() {
            Proven proven = proven(Jobs.failSecure());
            proven.holds("starts-when-disarmed starter-solenoid");
            proven.holds("does-not-start-when-armed starter-solenoid");
            assertThat(proven.steps("starts-with-controller-dead starter-solenoid"))
                    .containsExactly("unplug the controller's supply leads", "turn the key to start");
        }

        /** An input with protection diodes wakes an unplugged controller by way of the dome lamp. */
        @Test
        void breaksWhenALeadKeepsAnUnpluggedControllerAlive() {
            Kit kit = AKit.named("kit with clamps")
                    .supply("supply")
                    .ground("ground")
                    .lead(
                            "trigger",
                            LeadRole.DOOR_INPUT,
                            new Port.Input(
                                    Port.Active.LOW,
                                    Figured.volts(2),
                                    Figured.volts(4),
                                    Optional.of(Figured.ohms(10_000)),
                                    Optional.empty(),
                                    true),
                            false)
                    .lowSide("interrupt", LeadRole.STARTER_INTERRUPT, 0.5, AKit.GUARDING)
                    .highSide("siren", LeadRole.SIREN, 3, Set.of(ControllerState.SOUNDING))
                    .kit();
            Brief brief =
                    new Brief(HANDCART.brief().sheet(), kit, HANDCART.brief().order());
            Proven proven = proven(HANDCART.with(brief));
            assertThat(proven.steps("starts-with-controller-dead starter-solenoid"))
                    .containsExactly(
                            "arm and wait 20 s", "unplug the controller's supply leads", "turn the key to start");
        }
    }

    @Nested
    class DoesNotStartWhenArmed {

        @Test
        void breaksWhenTheCoilHasNoFeed() {
            Proven proven = proven(HANDCART.with(Altered.withoutWire(HANDCART.plan(), "W6")));
            assertThat(proven.steps("does-not-start-when-armed starter-solenoid"))
                    .containsExactly("arm and wait 20 s", "turn the key to start");
        }

        /** A coil that needs 9.5 V does not pull in on a battery that cranks at 9.0 V; it needs the low battery to be seen. */
        @Test
        void breaksOnACrankingBatteryWhenTheRelayPullsInLate() {
            AddedPart late = new AddedPart.Relay(
                    new AddedPartId("K1"), new Ohms(85), new Volts(9.5), new Volts(1.2), new Amps(40), new Amps(30));
            Proven proven = proven(HANDCART.with(Altered.part(HANDCART.plan(), late)));
            assertThat(proven.steps("does-not-start-when-armed starter-solenoid"))
                    .containsExactly("arm and wait 20 s", "battery at 9 V (cranking)", "turn the key to start");
        }
    }

    @Nested
    class OpeningSeen {

        @Test
        void breaksWhenTheTriggerWireIsOff() {
            Proven proven = proven(HANDCART.with(Altered.withoutWire(HANDCART.plan(), "W3")));
            assertThat(proven.steps("opening-seen driver-door"))
                    .containsExactly("arm and wait 20 s", "open driver-door");
        }

        @Test
        void waitsForTheMeasurementThatALeadOnHoldWaitsFor() {
            Proven proven = proven(with(Jobs.fedPlan().hold("trigger", Wish.WATCH_OPENINGS, "levels-of dome")));
            assertThat(proven.open("opening-seen driver-door").settledBy())
                    .extracting(m -> m.name())
                    .containsExactly("levels-of dome");
        }
    }

    @Nested
    class QuietWhenClosed {

        /** A trigger read low on a wire that the key takes to ground potential: with the key out the alarm goes off. */
        @Test
        void breaksWhenTheTriggerHangsOnTheIgnition() {
            Proven proven = proven(
                    HANDCART.with(Altered.rewired(HANDCART.plan(), "W3", "lead trigger", "circuit ignition tap")));
            assertThat(proven.steps("quiet-when-closed trigger")).containsExactly("arm and wait 20 s");
        }
    }

    /** What a warning or the alarm itself does to the inputs. */
    @Nested
    class WhileItActs {

        private static Jobs.Job with(AKit kit, Plan plan) {
            Kit built = kit.kit();
            return HANDCART.with(new Brief(
                            HANDCART.brief().sheet(), built, HANDCART.brief().order()))
                    .with(plan);
        }

        /** An output that lights the dome while it sounds pulls down the very wire that tells of the door. */
        @Test
        void anAlarmThatLightsTheWatchedWireKeepsItselfGoing() {
            AKit kit = AKit.simple().lowSide("light", LeadRole.INTERIOR_LIGHT, 2, Set.of(ControllerState.SOUNDING));
            Plan plan = Jobs.simplePlan()
                    .wire("W20", "lead light", "circuit dome tap")
                    .connect("light", Wish.INTERIOR_LIGHT, "dome", "", "W20")
                    .forKit(kit.kit());
            Proven proven = proven(with(kit, plan));
            assertThat(proven.steps("quiet-when-closed trigger")).containsExactly("arm and wait 20 s", "make it sound");
        }

        /**
         * A sounder that chirps while it warns, behind 60 m of 0.5 mm², 37 mΩ/m: 0.9 A at 9 V takes 2 V of it, and the controller,
         * which needs 8 V, is gone before it sounds. Armed and silent it has 9 V less 12 mA · 2.2 Ω.
         */
        @Test
        void aWarningThatPutsTheControllerToSleepIsNoAlarm() {
            AKit kit = AKit.simple()
                    .output(new OutputBehaviour(
                            new LeadId("siren"), Set.of(ControllerState.WARNING), OutputTiming.STEADY));
            Plan plan = Altered.resized(Jobs.simplePlan().forKit(kit.kit()), "W1", 60, 0.5);
            Proven proven = proven(with(kit, plan));
            assertThat(proven.steps("opening-seen driver-door"))
                    .containsExactly(
                            "arm and wait 20 s", "make it warn", "open driver-door", "battery at 9 V (cranking)");
        }
    }

    @Nested
    class StockAsBefore {

        /** Three door wires on one input without diodes: one open door lights the lamps of the others. */
        @Test
        void breaksWithoutIsolationDiodes() {
            Jobs.Job van = Jobs.vanJob();
            Jobs.Job bare = van.with(Altered.rewired(
                    Altered.rewired(
                            Altered.rewired(van.plan(), "W23", "lead trigger", "circuit driver-lamp tap"),
                            "W24",
                            "lead trigger",
                            "circuit passenger-lamp tap"),
                    "W25",
                    "lead trigger",
                    "circuit trunk-lamp tap"));
            Proven proven = proven(bare);
            assertThat(proven.steps("stock-as-before passenger-lamp-lamp")).containsExactly("open driver-door");
            assertThat(proven.steps("stock-as-before driver-lamp-lamp")).containsExactly("open passenger-door");
        }
    }

    @Nested
    class DoesItsWork {

        @Test
        void breaksWhenTheSounderHasNoGround() {
            Proven proven = proven(HANDCART.with(Altered.withoutWire(HANDCART.plan(), "W13")));
            assertThat(proven.steps("does-its-work siren B1")).containsExactly("arm and wait 20 s", "make it sound");
        }

        @Test
        void isOpenForAWishThatNothingServes() {
            Brief brief = new Brief(
                    HANDCART.brief().sheet(),
                    HANDCART.brief().kit(),
                    AnOrder.forWishes(Wish.STARTER_INTERRUPT, Wish.SIREN, Wish.HORN)
                            .watching("driver-door")
                            .order());
            proven(HANDCART.with(brief)).open("does-its-work horn");
        }
    }

    @Nested
    class WithinRating {

        /** A sounder of 1.2 A at 12.6 V draws 1.41 A at 14.8 V: a fuse of 1 A is over by some four tenths. */
        @Test
        void breaksWithAFuseTooSmall() {
            AddedPart small = new AddedPart.Fuse(new AddedPartId("F1"), new Amps(1));
            Proven proven = proven(HANDCART.with(Altered.part(HANDCART.plan(), small)));
            assertThat(proven.broken("within-rating F1").worst().slack()).isCloseTo(-42, within(3.0));
            assertThat(proven.steps("within-rating F1")).containsExactly("arm and wait 20 s", "make it sound");
        }
    }

    @Nested
    class CoilKick {

        @Test
        void breaksWithoutAClampDiode() {
            Proven proven = proven(HANDCART.with(Altered.withoutPart(HANDCART.plan(), new AddedPartId("D1"))));
            assertThat(proven.steps("coil-kick interrupt K1"))
                    .containsExactly("arm and wait 20 s", "turn the key to on");
            assertThat(proven.notHolding()).containsExactly("coil-kick interrupt K1");
        }

        /** An output with a clamp to its own supply bears the kick by itself. */
        @Test
        void holdsWithoutADiodeWhereTheOutputClamps() {
            Kit kit = AKit.named("kit with clamped output")
                    .supply("supply")
                    .ground("ground")
                    .triggerLow("trigger", LeadRole.DOOR_INPUT)
                    .lead(
                            "interrupt",
                            LeadRole.STARTER_INTERRUPT,
                            new Port.LowSide(Figured.amps(0.5), Figured.volts(0.3), Optional.empty(), true, true),
                            false)
                    .highSide("siren", LeadRole.SIREN, 3, Set.of(ControllerState.SOUNDING))
                    .kit();
            Kit acting = new Kit(
                    kit.name(),
                    kit.leastSupply(),
                    kit.mostSupply(),
                    kit.survives(),
                    kit.standby(),
                    kit.leads(),
                    kit.options(),
                    kit.extras(),
                    HANDCART.brief().kit().behaviour());
            Jobs.Job job = new Jobs.Job(
                    new Brief(HANDCART.brief().sheet(), acting, HANDCART.brief().order()),
                    Altered.withoutPart(HANDCART.plan(), new AddedPartId("D1")));
            proven(job).holds("coil-kick interrupt K1");
        }
    }

    @Nested
    class OnHold {

        @Test
        void theStarterClaimsAreOpenWhileItsLeadWaits() {
            Proven proven = proven(with(APlan.byHand()
                    .fuse("F1", 5)
                    .wire("W1", "lead supply", "F1 2")
                    .wire("W2", "F1 1", "circuit constant tap")
                    .wire("W4", "lead ground", "body")
                    .wire("W3", "lead trigger", "circuit dome tap")
                    .connect("supply", Wish.BASICS, "constant", "F1", "W1 W2")
                    .connect("ground", Wish.BASICS, "", "", "W4")
                    .connect("trigger", Wish.WATCH_OPENINGS, "dome", "", "W3")
                    .hold("interrupt", Wish.STARTER_INTERRUPT, "levels-of starter")));
            for (String claim :
                    new String[] {"starts-when-disarmed", "starts-with-controller-dead", "does-not-start-when-armed"}) {
                assertThat(proven.open(claim + " interrupt").settledBy())
                        .extracting(m -> m.name())
                        .containsExactly("levels-of starter");
            }
            proven.holds("opening-seen driver-door");
            proven.open("does-its-work siren");
        }
    }

    @Nested
    class Assumed {

        /**
         * The joint between a door wire and the body is assumed to resist anything up to 4 kΩ; from 1.56 kΩ on, the input's
         * pull-up of 10 kΩ holds the wire above 2 V. The verdict is open and names the joint.
         */
        @Test
        void aClaimThatFlipsInsideAnAssumedRangeIsOpenAndNamesTheReading() {
            Kit kit = HANDCART.brief().kit();
            Brief brief = new Brief(
                    AVehicle.named("leaky cart")
                            .door("driver-door")
                            .withConstantSupply("constant", 20)
                            .withIgnition("ignition")
                            .withStarter("starter", 1.2)
                            .circuit(
                                    "dome",
                                    CircuitRole.DOOR_TRIGGER,
                                    new Level.Supply(),
                                    new Level.Ground(),
                                    List.of("driver-door"),
                                    Access.MAY_BE_TAPPED,
                                    List.of(
                                            Steps.here(),
                                            Steps.resistor(
                                                    "door-joint",
                                                    Figured.assumed("dome.joint", Ohms::new, 1, 100, 4000)),
                                            Steps.pinSwitch("driver-door-pin", "driver-door"),
                                            Steps.ground()))
                            .sheet(),
                    kit,
                    HANDCART.brief().order());
            Proven proven = proven(HANDCART.with(brief));
            Verdict.Open open = proven.open("opening-seen driver-door");
            assertThat(open.settledBy()).extracting(m -> m.name()).containsExactly("reading-of door-joint resistance");
        }
    }
}
