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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.words.Phrase;

/** Actuators out of the box: the grammar offers, the prover judges, and what wins has no part too many. */
class ActuatorsWeighedTest {

    private static final List<LeadId> LEADS = List.of(new LeadId("lock"), new LeadId("unlock"));
    private static final Map<String, Integer> ENDED = new TreeMap<>();

    /**
     * Two actuators of 4 A draw 9.4 A at 14.8 V; the coil of the usual relay 178 mA at most. Where the outputs bear the coils two relays
     * do, also where current would come back: a coil leads to the body, or hangs behind the controller's own fuse. Where they do not, a
     * module stands before each.
     */
    @ParameterizedTest
    @CsvSource({
        "LOW, 0.5, false, false, 0, 2",
        "HIGH, 0.5, false, false, 0, 2",
        "LOW, 0.1, false, false, 2, 2",
        "HIGH, 0.1, false, false, 2, 2",
        "HIGH, 0.5, true, false, 0, 2",
        "LOW, 0.5, true, false, 0, 2",
        "LOW, 0.5, true, true, 0, 2"
    })
    void whatTheOutputsBearSaysWhatStandsBeforeTheCoils(
            String side, double rating, boolean bodyDiode, boolean clamps, int buffers, int diodes) {
        PlannedJob job = new Weigher().weigh(brief(4, 2, port(side, rating, bodyDiode, clamps)));

        Weighed.nothingIsBroken(side, job);
        assertThat(job.plan().refusals()).isEmpty();
        assertThat(count(job.plan(), AddedPart.Relay.class)).isEqualTo(2);
        assertThat(count(job.plan(), AddedPart.Buffer.class)).isEqualTo(buffers);
        assertThat(count(job.plan(), AddedPart.Diode.class)).isEqualTo(diodes);
    }

    /** Legs that rest at the fused supply do the same with as many parts: proven alike, they only come later. */
    @Test
    void legsThatRestAtTheSupplyAreDrawnAndProvenAndComeLater() {
        Brief brief = brief(4, 2, port("LOW", 0.5, false, false));
        Candidates candidates = Planner.plan(brief);
        PlannedJob job = new Weigher().weigh(brief);

        Plan other = candidates.plans().stream()
                .filter(plan -> coupling(plan).equals("coupling.added-actuators-at-supply"))
                .findFirst()
                .orElseThrow();
        Proof proof = Prover.prove(brief, other);

        assertThat(coupling(job.plan())).isEqualTo("coupling.added-actuators");
        assertThat(proof.results()).noneMatch(result -> result.verdict() instanceof Verdict.Broken);
        assertThat(Losers.isWorse(Score.of(brief, other, proof), Score.of(brief, job.plan(), job.proof())))
                .isEqualTo(Losers.Worse.LATER);
    }

    /** Before outputs that clamp modules are tried first. Coils behind the controller's own fuse hold as well, and both leads tell why they win. */
    @Test
    void modulesBeforeOutputsThatClampLoseByTheirPartsAndBothLeadsTellIt() {
        PlannedJob job = new Weigher().weigh(brief(4, 2, port("LOW", 0.5, true, true)));

        assertThat(LEADS)
                .allSatisfy(lead -> assertThat(
                                job.plan().findHookup(lead).orElseThrow().insteadOf())
                        .extracting(Phrase::key)
                        .contains("weigh.lost.more-parts"));
    }

    static LongStream seeds() {
        return Sample.seeds(6, 100);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyActuatorsOnAnyOutputsEndInAProvenCouplingOrAReasonAndNothingBetterIsMissed(long seed) {
        Random random = new Random(seed * 32_452_843);
        double amps = between(random, 1, 9);
        int doors = 1 + random.nextInt(3);
        Port port = port(
                random.nextBoolean() ? "LOW" : "HIGH",
                between(random, 0.02, 0.8),
                random.nextBoolean(),
                random.nextInt(3) == 0);

        PlannedJob job = Weighed.best(doors + " of " + amps + " A on " + port, brief(amps, doors, port));

        ENDED.merge(told(job.plan()), 1, Integer::sum);
    }

    @AfterAll
    static void tellHowTheyEnded() {
        Note.that("actuators out of the box on two outputs ended in " + ENDED);
    }

    private static String told(Plan plan) {
        return coupling(plan) + ", " + count(plan, AddedPart.Buffer.class) + " buffers, "
                + count(plan, AddedPart.Diode.class) + " diodes";
    }

    private static String coupling(Plan plan) {
        return LEADS.stream()
                .flatMap(lead -> plan.findHookup(lead).stream())
                .map(hookup -> hookup instanceof Hookup.Connect connect ? connect.coupling() : "turned down")
                .distinct()
                .reduce((one, other) -> one + " and " + other)
                .orElseThrow();
    }

    private static long count(Plan plan, Class<? extends AddedPart> kind) {
        return plan.parts().stream().filter(kind::isInstance).count();
    }

    private static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private static Port port(String side, double rating, boolean bodyDiode, boolean clamps) {
        Optional<Figure<Seconds>> pulse = Optional.of(Figure.exactly(new Seconds(0.8), Figured.STATED));
        return side.equals("LOW")
                ? new Port.LowSide(Figured.amps(rating), Figured.volts(0.3), pulse, bodyDiode, clamps)
                : new Port.HighSide(Figured.amps(rating), Figured.volts(0.2), pulse, bodyDiode);
    }

    private static Brief brief(double amps, int doors, Port port) {
        AVehicle car =
                AVehicle.named("any car").withConstantSupply("constant", 60).withIgnition("ignition");
        AKit kit = AKit.named("any kit")
                .supply("supply")
                .ground("ground")
                .lead("lock", LeadRole.LOCK, port, false)
                .lead("unlock", LeadRole.UNLOCK, port, false)
                .output(new OutputBehaviour(LEADS.getFirst(), Set.of(ControllerState.ARMING), OutputTiming.PULSE))
                .output(new OutputBehaviour(LEADS.getLast(), Set.of(ControllerState.DISARMED), OutputTiming.PULSE));
        for (int door = 1; door <= doors; door++) {
            kit.extra(new Extra(
                    "actuator " + door,
                    Extra.Kind.ACTUATOR,
                    Optional.of(Figured.amps(amps)),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
        }
        return new Brief(car.sheet(), kit.kit(), AnOrder.forWishes(Wish.LOCKS).order());
    }
}
