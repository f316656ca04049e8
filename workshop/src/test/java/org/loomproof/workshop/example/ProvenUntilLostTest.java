package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;

/** A candidate that is proven only until it has lost loses exactly where its whole proof loses, for a reason that stands there. */
class ProvenUntilLostTest {

    private static final int CANDIDATES = Sample.count(2, 12);

    private static final AtomicLong LOST = new AtomicLong();
    private static final AtomicLong SOLVES_WHOLE = new AtomicLong();
    private static final AtomicLong SOLVES_UNTIL_LOST = new AtomicLong();

    static List<Path> examples() {
        return ExampleFiles.list();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void itIsLostWhereTheWholeProofIs(Path folder) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        for (Plan plan : Planner.plan(brief).plans().stream().limit(CANDIDATES).toList()) {
            Proof whole = Prover.prove(brief, plan);
            Proof untilLost = Prover.proveUntilLost(brief, plan, 0);

            if (whole.countBroken() == 0) {
                assertThat(untilLost).isEqualTo(whole);
            } else {
                List<String> broken = broken(untilLost);
                assertThat(broken).isNotEmpty();
                assertThat(broken(whole)).containsAll(broken);
                assertThat(untilLost.effort().solves())
                        .isLessThanOrEqualTo(whole.effort().solves());
                LOST.incrementAndGet();
                SOLVES_WHOLE.addAndGet(whole.effort().solves());
                SOLVES_UNTIL_LOST.addAndGet(untilLost.effort().solves());
            }
        }
    }

    private static List<String> broken(Proof proof) {
        return proof.results().stream()
                .filter(ClaimResult::countsAsBroken)
                .map(ClaimResult::id)
                .toList();
    }

    @AfterAll
    static void tellHowMuch() {
        assertThat(LOST.get()).as("candidates that lose").isPositive();
        assertThat(SOLVES_UNTIL_LOST.get()).isLessThan(SOLVES_WHOLE.get());
        Note.that(LOST.get() + " candidates lost after " + SOLVES_UNTIL_LOST.get() + " operating points, "
                + SOLVES_WHOLE.get() + " in whole");
    }
}
