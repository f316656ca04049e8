package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.planner.rule.Searched;
import org.loomproof.workshop.weigh.PlannedJob;

/** What the plan of every example does to a factory wire is, read from its parts and wires alone, a word that was enumerated. */
class ExampleWordsTest {

    private static final AtomicInteger READ = new AtomicInteger();
    private static final AtomicLong PROVEN = new AtomicLong();

    static List<Path> examples() {
        return ExampleFiles.list();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyCouplingOfAnOutputIsAWordThatTheGrammarOffers(Path folder) {
        PlannedJob job = PlannedExamples.job(folder);
        PROVEN.addAndGet(job.search().plansProven());

        for (Searched searched : job.search().leads()) {
            if (job.plan().findHookup(searched.lead()).orElseThrow() instanceof Hookup.Connect hookup
                    && !hookup.coupling().startsWith("coupling.added-")) {
                for (CircuitId target : hookup.circuits()) {
                    assertThat(searched.enumeration().words())
                            .as("%s of %s", searched.lead(), folder.getFileName())
                            .contains(WordReader.read(job.plan(), hookup, target));
                    READ.incrementAndGet();
                }
            }
        }
    }

    @AfterAll
    static void tellHowMany() {
        assertThat(READ.get()).as("couplings read").isGreaterThan(20);
        Note.that(READ.get() + " couplings of outputs in the examples are words of the grammar; " + PROVEN.get()
                + " whole plans were proven for " + examples().size() + " examples");
    }
}
