package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomproof.workshop.prover.Proven.proven;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.words.Messages;

/**
 * The sneak circuits that the literature of sneak circuit analysis tells again and again, drawn as networks and solved. All from
 * memory: none of the papers was at hand.
 */
class PublishedSneakCircuitsTest {

    /** One load behind a switch of its own on a bus, and a second one that shares the bus by way of a further switch. */
    private record Shared(String busSwitch, PathStep onTheBus, String branchSwitch, PathStep onTheBranch) {

        AVehicle vehicle(boolean branchHasItsOwnFeed) {
            return AVehicle.named("two loads, one bus")
                    .control(busSwitch, "off", "on")
                    .control(branchSwitch, "off", "on")
                    .withConstantSupply("constant", 20)
                    .circuit(
                            "bus",
                            CircuitRole.OTHER,
                            new Level.Open(),
                            new Level.Supply(),
                            List.of(busSwitch),
                            Access.MAY_BE_TAPPED,
                            List.of(
                                    Steps.supply(),
                                    Steps.fuse("bus-fuse", 15),
                                    Steps.contact(busSwitch + "-contact", busSwitch, "on"),
                                    Steps.point("bus"),
                                    Steps.here(),
                                    onTheBus,
                                    Steps.ground()))
                    .circuit(
                            "branch",
                            CircuitRole.OTHER,
                            new Level.Open(),
                            new Level.Supply(),
                            List.of(branchSwitch),
                            Access.MAY_BE_TAPPED,
                            branchHasItsOwnFeed
                                    ? branch(Steps.supply(), Steps.fuse("branch-fuse", 15))
                                    : branch(Steps.point("bus")));
        }

        private List<PathStep> branch(PathStep... from) {
            return Stream.concat(
                            Arrays.stream(from),
                            Stream.of(
                                    Steps.contact(branchSwitch + "-contact", branchSwitch, "on"),
                                    Steps.here(),
                                    onTheBranch,
                                    Steps.ground()))
                    .toList();
        }

        /** A second feed for the branch alone: an output of 10 A straight on its wire. */
        Proven withASecondFeed(boolean branchHasItsOwnFeed) {
            Kit kit = AKit.named("kit with a strong output")
                    .supply("supply")
                    .ground("ground")
                    .highSide("second", LeadRole.LAMPS, 10, Set.of(ControllerState.SOUNDING))
                    .kit();
            Brief brief = new Brief(
                    vehicle(branchHasItsOwnFeed).sheet(),
                    kit,
                    AnOrder.forWishes(Wish.LAMPS).order());
            return proven(new Jobs.Job(
                    brief,
                    fed().wire("W3", "lead second", "circuit branch tap")
                            .connect("second", Wish.LAMPS, "branch", "", "W3")
                            .forKit(kit)));
        }
    }

    private static APlan fed() {
        return APlan.byHand()
                .fuse("F1", 15)
                .wire("W1", "lead supply", "F1 2")
                .wire("W2", "F1 1", "circuit constant tap", 0.2, 1)
                .wire("W4", "lead ground", "body")
                .connect("supply", Wish.BASICS, "constant", "F1", "W1 W2")
                .connect("ground", Wish.BASICS, "", "", "W4");
    }

    private static List<String> seen(Proven proven, String claim) {
        return proven.broken(claim).witness().seen().stream()
                .map(PublishedSneakCircuitsTest::words)
                .toList();
    }

    private static String words(Observation seen) {
        return Messages.english().text(seen.at()) + ": " + seen.reads();
    }

    private static final Shared RADIO_AND_BRAKE_LAMPS =
            new Shared("ignition", Steps.electronic("radio", 12), "brake-pedal", Steps.lamp("brake-lamps", 42));

    /**
     * The classic: radio and brake-lamp switch hang on the ignition, the hazard flasher feeds the lamps from the battery. With the
     * ignition off, the flasher on and the foot on the brake the radio plays by way of the brake-lamp switch. 12 Ω at a battery
     * of 12.6 V, less some tenths in output, wires and fuse, is about 1 A.
     */
    @Test
    void theRadioThatPlaysInTimeWithTheHazardFlasher() {
        Proven proven = RADIO_AND_BRAKE_LAMPS.withASecondFeed(false);
        assertThat(proven.steps("no-sneak-path radio"))
                .containsExactly("arm and wait 20 s", "make it sound", "put brake-pedal to on");
        assertThat(seen(proven, "no-sneak-path radio"))
                .anySatisfy(line -> assertThat(line)
                        .matches("amps by way of .*added fuse F1.*lead second of the kit.*added wire W3, factory switch"
                                + " brake-pedal-contact of circuit branch, radio of circuit bus: 1\\.0[0-9] A"));
        assertThat(proven.steps("no-sneak-path brake-pedal-contact"))
                .containsExactly("arm and wait 20 s", "make it sound", "put brake-pedal to on");
        assertThat(seen(proven, "no-sneak-path brake-pedal-contact"))
                .anySatisfy(line -> assertThat(line)
                        .matches(
                                "amps through factory switch brake-pedal-contact of circuit branch, the other way round:"
                                        + " 1\\.0[0-9] A"));
        proven.holds("does-its-work second brake-lamps");
    }

    /** The same where the brake pedal works a relay, as it does in newer cars: now the relay's contact carries the current back. */
    @Test
    void theRadioThatPlaysByWayOfARelaysContact() {
        Kit kit = AKit.named("kit with a strong output")
                .supply("supply")
                .ground("ground")
                .highSide("second", LeadRole.LAMPS, 10, Set.of(ControllerState.SOUNDING))
                .kit();
        AVehicle vehicle = AVehicle.named("brake lamps by a relay")
                .control("ignition", "off", "on")
                .control("brake-pedal", "off", "on")
                .withConstantSupply("constant", 20)
                .circuit(
                        "bus",
                        CircuitRole.OTHER,
                        new Level.Open(),
                        new Level.Supply(),
                        List.of("ignition"),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.supply(),
                                Steps.fuse("bus-fuse", 15),
                                Steps.contact("ignition-contact", "ignition", "on"),
                                Steps.point("bus"),
                                Steps.here(),
                                Steps.electronic("radio", 12),
                                Steps.ground()))
                .circuit(
                        "pedal",
                        CircuitRole.OTHER,
                        new Level.Open(),
                        new Level.Supply(),
                        List.of("brake-pedal"),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.supply(),
                                Steps.fuse("pedal-fuse", 10),
                                Steps.contact("brake-pedal-contact", "brake-pedal", "on"),
                                Steps.here(),
                                Steps.coil("brake-relay-coil", "brake-relay", 90),
                                Steps.ground()))
                .circuit(
                        "branch",
                        CircuitRole.OTHER,
                        new Level.Open(),
                        new Level.Supply(),
                        List.of("brake-pedal"),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.point("bus"),
                                Steps.makeContact("brake-relay-contact", "brake-relay"),
                                Steps.here(),
                                Steps.lamp("brake-lamps", 42),
                                Steps.ground()));
        Brief brief =
                new Brief(vehicle.sheet(), kit, AnOrder.forWishes(Wish.LAMPS).order());
        Proven proven = proven(new Jobs.Job(
                brief,
                fed().wire("W3", "lead second", "circuit branch tap")
                        .connect("second", Wish.LAMPS, "branch", "", "W3")
                        .forKit(kit)));
        assertThat(proven.steps("no-sneak-path brake-relay-contact"))
                .containsExactly("arm and wait 20 s", "make it sound", "put brake-pedal to on");
        assertThat(seen(proven, "no-sneak-path brake-relay-contact"))
                .anySatisfy(line -> assertThat(line)
                        .matches(
                                "amps by way of .*added fuse F1.*added wire W3, .*brake-relay-contact of circuit branch"
                                        + ".*, radio of circuit bus: 1\\.0[0-9] A"));
    }

    /** The cure: the brake-lamp switch gets its feed from the battery. */
    @Test
    void theRadioIsSilentWhenTheBrakeLampsHaveAFeedOfTheirOwn() {
        Proven proven = RADIO_AND_BRAKE_LAMPS.withASecondFeed(true);
        proven.holds("no-sneak-path brake-pedal-contact");
        assertThat(proven.notHolding()).isEmpty();
    }

    /**
     * The cargo door that lowers the landing gear: the door's usual switch hangs on the gear's bus, an emergency switch feeds
     * the door straight. Whoever works both lets the current run back through the usual switch into the gear's valve.
     */
    @Test
    void theCargoDoorThatLowersTheLandingGear() {
        Proven proven = new Shared(
                        "gear-handle", Steps.solenoid("gear-valve", 24), "door-switch", Steps.solenoid("door-latch", 6))
                .withASecondFeed(false);
        assertThat(proven.steps("no-sneak-path gear-valve"))
                .containsExactly("arm and wait 20 s", "make it sound", "put door-switch to on");
        assertThat(proven.steps("no-sneak-path door-switch-contact"))
                .containsExactly("arm and wait 20 s", "make it sound", "put door-switch to on");
    }

    /**
     * The rocket whose engine was shut down at lift-off: when the plug that carried its ground let go before the other, what it
     * consumed found another way back through a cut-off coil. Here a controller that draws 0.3 A loses its ground with the key
     * out: its current goes through the diode in its output and the coil to whatever else hangs on the ignition.
     */
    @Test
    void theCutOffCoilThatBecomesTheWayBackWhenTheGroundIsLost() {
        Kit plain = AKit.named("kit that draws much")
                .supply("supply")
                .ground("ground")
                .lowSide("cut-off", LeadRole.TRUNK_RELEASE, 1, Set.of(ControllerState.SOUNDING))
                .kit();
        Kit kit = new Kit(
                plain.name(),
                plain.leastSupply(),
                plain.mostSupply(),
                plain.survives(),
                Figure.exactly(new Amps(0.3), Figured.STATED),
                plain.leads(),
                plain.options(),
                plain.extras(),
                plain.behaviour());
        AVehicle vehicle = AVehicle.named("coil on the ignition")
                .control("cut-off-button", "off", "on")
                .withConstantSupply("constant", 20)
                .circuit(
                        "ignition",
                        CircuitRole.OTHER,
                        new Level.Open(),
                        new Level.Supply(),
                        List.of("key"),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.supply(),
                                Steps.contact("key-contact", "key", "on", "start"),
                                Steps.point("ignition"),
                                Steps.here(),
                                Steps.electronic("ignition-coil", 5),
                                Steps.ground()))
                .circuit(
                        "cut-off",
                        CircuitRole.OTHER,
                        new Level.Open(),
                        new Level.Ground(),
                        List.of("cut-off-button"),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.point("ignition"),
                                Steps.solenoid("cut-off-coil", 40),
                                Steps.here(),
                                Steps.contact("cut-off-contact", "cut-off-button", "on"),
                                Steps.ground()));
        Brief brief = new Brief(
                vehicle.sheet(), kit, AnOrder.forWishes(Wish.TRUNK_RELEASE).order());
        Proven proven = proven(new Jobs.Job(
                brief,
                fed().wire("W3", "lead cut-off", "circuit cut-off tap")
                        .connect("cut-off", Wish.TRUNK_RELEASE, "cut-off", "", "W3")
                        .forKit(kit)));
        assertThat(proven.steps("stock-as-before cut-off-coil")).containsExactly("open the controller's ground leads");
        assertThat(seen(proven, "stock-as-before cut-off-coil"))
                .anySatisfy(line -> assertThat(line)
                        .matches(
                                "amps by way of .*the controller's own consumption, lead cut-off of the kit, added wire W3,"
                                        + " cut-off-coil of circuit cut-off, ignition-coil of circuit ignition: .*"));
    }
}
