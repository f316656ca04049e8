package org.loomproof.workshop.weigh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Messages;

/**
 * Pairings of one circuit and one lead that nobody wrote down: the lead is joined and every claim about it holds, or it waits
 * for a named reading, or its wish is turned down with a reason. A coupling that breaks anything is never the answer.
 */
class PairingsTest {

    private static final LeadId LEAD = new LeadId("lead");
    private static final Map<String, Integer> ENDED = new TreeMap<>();

    static LongStream seeds() {
        return Sample.seeds(40, 400);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPairingEndsInAProvenCouplingOrAReason(long seed) {
        Pairing pairing = new Pairing(new Random(seed * 7919));
        Brief brief = pairing.brief();

        PlannedJob job = new Weigher().weigh(brief);

        Weighed.nothingIsBroken(pairing, job);
        Hookup hookup = job.plan().findHookup(LEAD).orElseThrow();
        ENDED.merge(hookup.getClass().getSimpleName(), 1, Integer::sum);
        assertThat(Messages.english().text(hookup.because())).isNotBlank();
        switch (hookup) {
            case Hookup.Connect connect ->
                assertThat(job.proof().results()).as("%s", pairing).anyMatch(r -> r.verdict() instanceof Verdict.Holds);
            case Hookup.Hold hold ->
                assertThat(Messages.english().text(hold.until().what())).isNotBlank();
            case Hookup.Trim trim ->
                assertThat(job.plan().refusals()).as("%s", pairing).isNotEmpty();
            case Hookup.CapAndKeep cap -> {
                assertThat(job.plan().refusals()).as("%s", pairing).isNotEmpty();
                // Through its clamp such an output looks worked while the controller has no supply: no part can tell
                // the two.
                assertThat(pairing.reads || clamps(pairing.port))
                        .as("%s", pairing)
                        .isTrue();
            }
        }
    }

    private static boolean clamps(Port port) {
        return port instanceof Port.LowSide out && out.clamp();
    }

    static LongStream fewerSeeds() {
        return Sample.seeds(15, 150);
    }

    @ParameterizedTest
    @MethodSource("fewerSeeds")
    void nothingBetterIsMissed(long seed) {
        Brief brief = new Pairing(new Random(seed * 104_729)).brief();
        Candidates candidates = Planner.plan(brief);

        PlannedJob picked = new Weigher().weigh(brief, candidates);

        Weighed.nothingBetterIsMissed(brief, candidates, picked);
    }

    @AfterAll
    static void tellHowTheyEnded() {
        Note.that("pairings of one circuit and one lead ended in " + ENDED);
    }

    /** A circuit and a lead, drawn from a seed. */
    private static final class Pairing {

        private final Random random;
        private final boolean reads;
        private final CircuitRole role;
        private final Shape shape;
        private final Port port;

        /** How the circuit is built. */
        private enum Shape {
            LAMP_TO_GROUND,
            COIL_TO_GROUND,
            LAMP_FROM_SUPPLY,
            LOAD_FROM_SUPPLY,
            HELD_AT_FIVE_VOLTS,
            BARE_CONTACT
        }

        Pairing(Random random) {
            this.random = random;
            this.reads = random.nextInt(3) == 0;
            this.role = reads
                    ? CircuitRole.DOOR_TRIGGER
                    : oneOf(
                            CircuitRole.HORN,
                            CircuitRole.PARKING_LAMP,
                            CircuitRole.INTERIOR_LIGHT,
                            CircuitRole.TRUNK_RELEASE);
            this.shape = reads
                    ? oneOf(Shape.values())
                    : oneOf(
                            Shape.LAMP_TO_GROUND,
                            Shape.COIL_TO_GROUND,
                            Shape.LAMP_FROM_SUPPLY,
                            Shape.LOAD_FROM_SUPPLY,
                            Shape.HELD_AT_FIVE_VOLTS);
            this.port = reads ? input() : random.nextBoolean() ? lowSide() : highSide();
        }

        @SafeVarargs
        private <T> T oneOf(T... all) {
            return all[random.nextInt(all.length)];
        }

        private double between(double least, double most) {
            return least * Math.pow(most / least, random.nextDouble());
        }

        private Port input() {
            boolean low = random.nextBoolean();
            Figure<Ohms> pull = Figured.ohms(between(2_000, 47_000));
            Figure<Volts> lowBelow = Figured.volts(between(0.8, 3));
            return new Port.Input(
                    low ? Port.Active.LOW : Port.Active.HIGH,
                    lowBelow,
                    Figured.volts(lowBelow.typical().value() + between(0.5, 3)),
                    low ? Optional.of(pull) : Optional.empty(),
                    low ? Optional.empty() : Optional.of(pull),
                    random.nextBoolean());
        }

        private Port lowSide() {
            return new Port.LowSide(
                    Figured.amps(between(0.1, 3)),
                    Figured.volts(between(0.05, 0.9)),
                    Optional.empty(),
                    random.nextBoolean(),
                    random.nextInt(4) == 0);
        }

        private Port highSide() {
            return new Port.HighSide(
                    Figured.amps(between(0.2, 12)),
                    Figured.volts(between(0.05, 0.5)),
                    Optional.empty(),
                    random.nextBoolean());
        }

        Brief brief() {
            AVehicle car = AVehicle.named("any car")
                    .door("left")
                    .control("knob", "off", "on")
                    .withConstantSupply("constant", 40)
                    .withIgnition("ignition");
            circuit(car);
            AKit kit = AKit.named("any kit").supply("supply").ground("ground");
            if (reads) {
                kit.trigger(LEAD.value(), LeadRole.DOOR_INPUT, port);
            } else {
                kit.lead(LEAD.value(), leadRole(), port, false)
                        .output(new OutputBehaviour(LEAD, Set.of(ControllerState.SOUNDING), OutputTiming.STEADY));
            }
            AnOrder order = reads ? AnOrder.forWishes().watching("left") : AnOrder.forWishes(wish());
            return new Brief(car.sheet(), kit.kit(), order.order());
        }

        private LeadRole leadRole() {
            return switch (role) {
                case HORN -> LeadRole.HORN;
                case PARKING_LAMP -> LeadRole.LAMPS;
                case INTERIOR_LIGHT -> LeadRole.INTERIOR_LIGHT;
                case TRUNK_RELEASE -> LeadRole.TRUNK_RELEASE;
                default -> throw new IllegalStateException(role.toString());
            };
        }

        private Wish wish() {
            return switch (role) {
                case HORN -> Wish.HORN;
                case PARKING_LAMP -> Wish.LAMPS;
                case INTERIOR_LIGHT -> Wish.INTERIOR_LIGHT;
                case TRUNK_RELEASE -> Wish.TRUNK_RELEASE;
                default -> throw new IllegalStateException(role.toString());
            };
        }

        private void circuit(AVehicle car) {
            Level ground = new Level.Ground();
            Level supply = new Level.Supply();
            PathStep contact = reads ? Steps.pinSwitch("pin", "left") : Steps.contact("knob-contact", "knob", "on");
            PathStep fuse = Steps.fuse("fuse", 20);
            PathStep lamp = Steps.lamp("lamp", between(2, 60));
            PathStep load = Steps.electronic("load", between(1.5, 400));
            PathStep coil = Steps.coil("coil", "factory-relay", between(60, 200));
            switch (shape) {
                case LAMP_TO_GROUND ->
                    lay(
                            car,
                            supply,
                            ground,
                            List.of(Steps.supply(), fuse, lamp, Steps.here(), contact, Steps.ground()));
                case COIL_TO_GROUND ->
                    lay(
                            car,
                            supply,
                            ground,
                            List.of(Steps.supply(), fuse, coil, Steps.here(), contact, Steps.ground()));
                case LAMP_FROM_SUPPLY ->
                    lay(
                            car,
                            ground,
                            supply,
                            List.of(Steps.supply(), fuse, contact, Steps.here(), lamp, Steps.ground()));
                case LOAD_FROM_SUPPLY ->
                    lay(
                            car,
                            ground,
                            supply,
                            List.of(Steps.supply(), fuse, contact, Steps.here(), load, Steps.ground()));
                case BARE_CONTACT -> lay(car, new Level.Open(), ground, List.of(Steps.here(), contact, Steps.ground()));
                case HELD_AT_FIVE_VOLTS ->
                    car.circuit(
                            "wire",
                            role,
                            new Level.Voltage(new Volts(5)),
                            ground,
                            List.of(reads ? "left" : "knob"),
                            Access.MAY_BE_TAPPED,
                            List.of(
                                    List.of(
                                            Steps.point("wire"),
                                            Steps.here(),
                                            Steps.moduleInput("module", between(1_000, 10_000))),
                                    List.of(Steps.point("wire"), contact, Steps.ground())));
            }
        }

        private void lay(AVehicle car, Level rest, Level active, List<PathStep> path) {
            car.circuit(
                    "wire", role, rest, active, List.of(reads ? "left" : "knob"), Access.MAY_BE_TAPPED, List.of(path));
        }

        @Override
        public String toString() {
            return role + " " + shape + " with " + port;
        }
    }
}
