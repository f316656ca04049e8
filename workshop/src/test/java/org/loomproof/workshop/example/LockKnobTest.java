package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
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
}
