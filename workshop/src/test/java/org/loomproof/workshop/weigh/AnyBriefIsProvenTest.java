package org.loomproof.workshop.weigh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.AnyBrief;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Messages;

/** Any valid brief, however contradictory, ends in a plan with verdicts; never in an exception. */
class AnyBriefIsProvenTest {

    static List<Long> seeds() {
        return Sample.of(LongStream.rangeClosed(1, 3000).boxed().toList(), 12);
    }

    /** A kit of so many pulses that the walk of its clocks is cut short. */
    @Test
    void aBriefWithManyPulsesGetsVerdictsThatCanBeRead() {
        anyBriefGetsVerdictsThatCanBeRead(218);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyBriefGetsVerdictsThatCanBeRead(long seed) {
        Brief brief = AnyBrief.from(seed);
        Plan plan = Planner.plan(brief).plans().getFirst();
        Proof proof = Prover.prove(brief, plan);

        Messages english = Messages.english();
        assertThat(proof.results()).allSatisfy(result -> {
            assertThat(english.text(result.statement())).isNotBlank();
            switch (result.verdict()) {
                case Verdict.Holds holds ->
                    assertThat(holds.tightest().isKept()).isTrue();
                case Verdict.Broken broken ->
                    assertThat(broken.witness().steps().stream().map(english::text))
                            .allMatch(s -> !s.isBlank());
                case Verdict.Declared declared ->
                    assertThat(english.text(declared.found())).isNotBlank();
                case Verdict.Open open ->
                    assertThat(english.text(open.because())).isNotBlank();
            }
        });
    }
}
