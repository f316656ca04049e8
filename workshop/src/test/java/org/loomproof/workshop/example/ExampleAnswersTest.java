package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.AlarmBell;
import org.loomproof.workshop.prover.Blindfold;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.VehicleWiring;

/** Every example is planned and proven for real and gives the answer that stands beside it. */
class ExampleAnswersTest {
    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleGivesItsAnswer(Path folder) {
        Expected expected = Expected.of(folder);
        Brief brief = ExamplesAreReadTest.brief(folder);
        PlannedJob job = PlannedExamples.job(folder);

        assertThat(broken(job.proof())).isEmpty();
        assertThat(hookups(job.plan())).isEqualTo(expected.hookups());
        assertThat(job.plan().refusals())
                .extracting(refusal -> refusal.wish().word())
                .containsExactlyInAnyOrderElementsOf(expected.refusals());
        assertThat(holds(job.plan())).containsExactlyInAnyOrderElementsOf(expected.holds());
        assertThat(tally(job.proof(), Verdict.Holds.class)).isEqualTo(expected.holding());
        assertThat(tally(job.proof(), Verdict.Open.class)).isEqualTo(expected.open());
        assertThat(tally(job.proof(), Verdict.Declared.class)).isEqualTo(expected.declared());
        assertThat(exitCode(job)).isEqualTo(expected.exit());
        BenchMeter meter = new BenchMeter(brief, VehicleWiring.fitted(brief, job.plan(), Corner.TYPICAL));
        assertThat(expected.handWorked())
                .filteredOn(Expected.HandWorked::fitted)
                .allSatisfy(figure -> assertThat(meter.reads(figure)).isCloseTo(figure.value(), BenchMeter.BY_HAND));
    }

    @ParameterizedTest
    @MethodSource("someExamples")
    void everySlipWithAnAddedPartIsCaughtOrThePartIsNotNeeded(Path folder) {
        AlarmBell bell = AlarmBell.ring(
                ExamplesAreReadTest.brief(folder), PlannedExamples.job(folder).plan());
        Note.that(bell.summary(ExampleFiles.root().relativize(folder).toString()));
        assertThat(bell.tried()).isPositive();
        assertThat(bell.missed()).isEmpty();
        assertThat(bell.notNeeded()).isEqualTo(Expected.of(folder).notNeeded());
    }

    @ParameterizedTest
    @MethodSource("someExamples")
    void namesRolesAndColoursDecideNothing(Path folder) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        Blindfold.check(new Jobs.Job(brief, PlannedExamples.job(folder).plan()), 7);
    }

    static List<Path> someExamples() {
        return Sample.of(ExampleFiles.list(), 2);
    }

    static List<Path> examples() {
        return ExampleFiles.list();
    }

    private static Map<String, String> hookups(Plan plan) {
        Map<String, String> decisions = new LinkedHashMap<>();
        for (Hookup hookup : plan.hookups()) {
            decisions.put(
                    hookup.lead().value(),
                    switch (hookup) {
                        case Hookup.Connect connect -> "connect";
                        case Hookup.Trim trim -> "trim";
                        case Hookup.CapAndKeep cap -> "cap-and-keep";
                        case Hookup.Hold hold -> "hold";
                    });
        }
        return decisions;
    }

    private static List<String> holds(Plan plan) {
        return plan.hookups().stream()
                .filter(Hookup.Hold.class::isInstance)
                .map(hookup -> ((Hookup.Hold) hookup).until().name())
                .toList();
    }

    private static List<String> broken(Proof proof) {
        return proof.results().stream()
                .filter(result -> result.verdict() instanceof Verdict.Broken)
                .map(ClaimResult::id)
                .toList();
    }

    /** How many results have that verdict, by the claim's name. */
    private static Map<String, Integer> tally(Proof proof, Class<? extends Verdict> verdict) {
        Map<String, Integer> counts = new TreeMap<>();
        for (ClaimResult result : proof.results()) {
            if (verdict.isInstance(result.verdict())) {
                String name = result.id().substring(0, result.id().indexOf(' '));
                counts.merge(name, 1, Integer::sum);
            }
        }
        return counts;
    }

    /** By precedence: 4 a wish refused, 3 a claim broken, 5 something open or on hold, 0 all proven. */
    private static int exitCode(PlannedJob job) {
        if (!job.plan().refusals().isEmpty()) {
            return 4;
        }
        if (!broken(job.proof()).isEmpty()) {
            return 3;
        }
        boolean undecided = !tally(job.proof(), Verdict.Open.class).isEmpty()
                || !holds(job.plan()).isEmpty();
        return undecided ? 5 : 0;
    }
}
