package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.words.Messages;

/** The order of tests of the hatchback, held to what the trade does; common practice, no published source. */
class TestOrderTest {

    private static final Path FOLDER = ExampleFiles.root().resolve("small-hatchback");
    private static final FaultProof FAULTS = PlannedExamples.faults(FOLDER);

    private static List<HandTest> tests() {
        return FAULTS.testOrder().tests();
    }

    private static HandTest test(String id) {
        return tests().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void eachWatchedOpeningIsOpenedInTurnWhileArmedDoorsFromInside() {
        ExamplesAreReadTest.brief(FOLDER).order().watched().forEach(opening -> {
            HandTest test = test("open-armed " + opening);
            assertThat(test.from()).isEqualTo(ControllerState.ARMED);
            boolean isDoor = opening.value().contains("door");
            assertThat(Messages.english().text(test.steps().getFirst()))
                    .isEqualTo(
                            isDoor
                                    ? "open " + opening + " from inside, reaching through the window"
                                    : "open " + opening);
        });
    }

    @Test
    void aStartIsTriedArmedAndDisarmed() {
        assertThat(test("start-armed").from()).isEqualTo(ControllerState.ARMED);
        assertThat(test("start-disarmed").from()).isEqualTo(ControllerState.DISARMED);
    }

    @Test
    void whatIsMeasuredDeadComesFirstAndTheMeterLast() {
        assertThat(tests())
                .extracting(test -> HandTest.Kind.inOrder().indexOf(test.kind()))
                .isSorted();
    }

    @Test
    void noTestIsTooMany() {
        assertThat(FAULTS.testOrder().gap()).isZero();
    }

    @Test
    void theDangerousIsNoticedWithoutException() {
        assertThat(FAULTS.coverage(Severity.FIRE_OR_LOSS_OF_CONTROL).percent()).isEqualTo(100);
    }

    /** A joint of an ohm that carries little shows to nobody. */
    @Test
    void whatIsLeftToTheEyeIsPoorJoints() {
        List<String> left = new ArrayList<>();
        for (int k = 0; k < FAULTS.results().size(); k++) {
            MishapResult result = FAULTS.results().get(k);
            if (!FAULTS.isNoticed(k) && result.severity() != Severity.NONE) {
                left.add(result.mishap().id());
            }
        }
        assertThat(left).allMatch(id -> id.startsWith("poor-joint"));
        assertThat(FAULTS.coverage().percent()).isGreaterThan(95);
    }

    @Test
    void whatCannotBeNoticedHasAnInspection() {
        for (int k = 0; k < FAULTS.results().size(); k++) {
            if (!FAULTS.isNoticed(k)) {
                assertThat(Messages.english()
                                .text(FAULTS.results().get(k).mishap().inspection()))
                        .isNotBlank();
            }
        }
    }
}
