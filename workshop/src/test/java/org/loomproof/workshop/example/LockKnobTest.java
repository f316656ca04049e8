package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.testorder.HandTests;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Messages;

/**
 * A lock wire whose switch stays as it is put: when the pulse is over the car sees the switch again. Common practice, no published
 * source.
 */
class LockKnobTest {

    private static final Path HELD = ExampleFiles.root().resolve("circuits/locks-held-wire");

    @TempDir
    private Path folder;

    private Plan planned(String knob, String pulse) {
        Brief brief = ReworkedExample.brief(
                HELD,
                folder,
                (file, text) -> text.replace(", moves-with-locks: yes", knob).replace("pulse: 3.5 s", pulse));
        return Planner.plan(brief).plans().getFirst();
    }

    private static String told(Plan plan, Hookup hookup) {
        return switch (hookup) {
            case Hookup.Connect connect -> "connect";
            case Hookup.Hold hold -> hold.until().name();
            case Hookup.CapAndKeep cap ->
                Messages.english().text(plan.refusals().getFirst().possibleIf());
            case Hookup.Trim trim -> "trim";
        };
    }

    @ParameterizedTest
    @CsvSource({
        "', moves-with-locks: yes', pulse: 3.5 s, connect",
        "', moves-with-locks: no', pulse: 3.5 s, the knob itself",
        "'', pulse: 3.5 s, knob-of lock-switch",
        "', moves-with-locks: yes', pulse: 2.9 s, A pulse of 3 s or more",
        "', moves-with-locks: yes', pulse: 2.9..3.5 s, connect"
    })
    void theWireIsWorkedWhereTheKnobMovesAndThePulseLasts(String knob, String pulse, String expected) {
        Plan plan = planned(knob, pulse);

        assertThat(plan.hookups())
                .filteredOn(
                        hookup -> List.of("P1-1", "P1-4").contains(hookup.lead().value()))
                .hasSize(2)
                .allSatisfy(hookup -> assertThat(told(plan, hookup)).contains(expected));
    }

    /** The plan made for a knob that moves, carried out in a car where it does not, or where nobody looked. */
    @ParameterizedTest
    @CsvSource({"', moves-with-locks: yes', Holds", "', moves-with-locks: no', Broken", "'', Open"})
    void whatThePulseDidStaysOnlyWhereTheKnobMoves(String knob, String verdict) {
        Brief brief =
                ReworkedExample.brief(HELD, folder, (file, text) -> text.replace(", moves-with-locks: yes", knob));
        assertThat(Prover.prove(brief, PlannedExamples.job(HELD).plan()).results())
                .filteredOn(result -> result.id().startsWith("stays-as-worked"))
                .isNotEmpty()
                .allSatisfy(result ->
                        assertThat(result.verdict().getClass().getSimpleName()).isEqualTo(verdict));
    }

    /**
     * Hand-worked at 12.6 V: unlocked, the wire hangs on the supply by 5 A fuse, switch and break contacts; as the locking pulse
     * ends it is back there, 12.6 V from the body that the pulse gave it.
     */
    @Test
    void aKnobThatStaysIsSeenInTwoSteps() {
        Brief brief =
                ReworkedExample.brief(HELD, folder, (file, text) -> text.replace("with-locks: yes", "with-locks: no"));
        assertThat(Prover.prove(brief, PlannedExamples.job(HELD).plan()).results())
                .filteredOn(result -> result.id().equals("stays-as-worked P1-4"))
                .singleElement()
                .satisfies(result -> assertThat(result.verdict())
                        .isInstanceOfSatisfying(Verdict.Broken.class, broken -> {
                            assertThat(broken.worst().slack()).isCloseTo(1.26 - 12.6, within(0.15));
                            assertThat(broken.witness().steps().stream().map(Messages.english()::text))
                                    .containsExactly("arm", "wait until the pulse of lead P1-4 is over");
                        }));
    }

    @Test
    void atHandOverTheKnobIsWatched() {
        Brief brief = ExamplesAreReadTest.brief(HELD);
        assertThat(HandTests.list(brief, PlannedExamples.job(HELD).plan(), true))
                .filteredOn(test -> test.id().equals("arm"))
                .flatExtracting(HandTest::steps)
                .extracting(Messages.english()::text)
                .contains("watch lock-switch: it moves with the locks, and has not run back when the pulse is over");
    }
}
