package org.loomproof.workshop.weigh;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.prover.ProofText;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Verdict;

/** Loads out of the box: the grammar offers, the prover judges, and what wins is what a technician would build. */
class AddedLoadsWeighedTest {

    private static final LeadId LEAD = new LeadId("lead");
    private static final Map<String, Integer> ENDED = new TreeMap<>();

    /**
     * A siren of 1.2 A at 12.6 V draws 1.41 A at 14.8 V; the coil of the usual relay 178 mA at most. What the output may carry, and
     * whether current gets back through it, says what stands between.
     */
    @ParameterizedTest
    @CsvSource({
        "HIGH, 2.0, false, coupling.added-load",
        "HIGH, 1.0, false, coupling.added-load-by-relay",
        "HIGH, 0.1, false, coupling.buffered-relay",
        "LOW, 2.0, false, coupling.added-load",
        "LOW, 0.5, false, coupling.added-load-by-relay",
        "LOW, 0.1, false, coupling.buffered-relay",
        "LOW, 2.0, true, coupling.buffered-relay"
    })
    void whatTheOutputBearsSaysWhatStandsBetween(String side, double rating, boolean clamps, String coupling) {
        Port port = side.equals("HIGH") ? highSide(rating, false) : lowSide(rating, clamps);
        PlannedJob job = new Weigher().weigh(siren(1.2, port));

        assertThat(coupling(job.plan())).isEqualTo(coupling);
        assertThat(job.proof().results())
                .as(ProofText.notHolding(job.proof()))
                .noneMatch(result -> result.verdict() instanceof Verdict.Broken);
    }

    /** A siren between the supply and an output that clamps into its own supply feeds the controller that has lost its fuse. */
    @Test
    void aSirenStraightOnAnOutputThatClampsIsTriedAndLoses() {
        Brief brief = siren(1.2, lowSide(2, true));
        Candidates candidates = Planner.plan(brief);

        Plan straight = candidates.plans().stream()
                .filter(plan -> coupling(plan).equals("coupling.added-load"))
                .findFirst()
                .orElseThrow();

        assertThat(Prover.prove(brief, straight).results())
                .anyMatch(result -> result.verdict() instanceof Verdict.Broken);
    }

    static LongStream seeds() {
        return Sample.seeds(20, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyLoadOnAnyOutputEndsInAProvenCouplingOrAReasonAndNothingBetterIsMissed(long seed) {
        Random random = new Random(seed * 15_485_863);
        double amps = between(random, 0.02, 6);
        Port port = random.nextBoolean()
                ? lowSide(between(random, 0.1, 8), random.nextInt(3) == 0)
                : highSide(between(random, 0.1, 8), random.nextBoolean());

        PlannedJob job = Weighed.best(amps + " A on " + port, siren(amps, port));

        ENDED.merge(coupling(job.plan()), 1, Integer::sum);
    }

    @AfterAll
    static void tellHowTheyEnded() {
        Note.that("loads out of the box on outputs ended in " + ENDED);
    }

    private static String coupling(Plan plan) {
        return plan.findHookup(LEAD).orElseThrow() instanceof Hookup.Connect connect
                ? connect.coupling()
                : "turned down";
    }

    private static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private static Port lowSide(double rating, boolean clamps) {
        return new Port.LowSide(Figured.amps(rating), Figured.volts(0.3), Optional.empty(), true, clamps);
    }

    private static Port highSide(double rating, boolean bodyDiode) {
        return new Port.HighSide(Figured.amps(rating), Figured.volts(0.2), Optional.empty(), bodyDiode);
    }

    private static Brief siren(double amps, Port port) {
        AVehicle car =
                AVehicle.named("any car").withConstantSupply("constant", 40).withIgnition("ignition");
        AKit kit = AKit.named("any kit")
                .supply("supply")
                .ground("ground")
                .extra(new Extra(
                        "siren",
                        Extra.Kind.SOUNDER,
                        Optional.of(Figured.amps(amps)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .lead(LEAD.value(), LeadRole.SIREN, port, false)
                .output(new OutputBehaviour(LEAD, Set.of(ControllerState.SOUNDING), OutputTiming.STEADY));
        return new Brief(car.sheet(), kit.kit(), AnOrder.forWishes(Wish.SIREN).order());
    }
}
