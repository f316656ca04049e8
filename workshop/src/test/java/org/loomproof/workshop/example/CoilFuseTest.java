package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.verdict.Severity;

/**
 * Contacts that lead motors hang on a fuse as large as the motors ask for. The coils beside them keep the small one: a clamp diode
 * that is turned round opens it, where behind the large one it would burn (common practice, no published source).
 */
class CoilFuseTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "circuits/locks-drivers-door-first",
                "circuits/boot-release-motor-leg",
                "circuits/locks-legs-at-ground"
            })
    void aClampDiodeThatIsTurnedRoundBurnsNothing(String example) {
        Path folder = ExampleFiles.root().resolve(example);
        FaultProof proof = PlannedExamples.faults(folder);

        assertThat(proof.results())
                .filteredOn(result -> isOfADiode(result.mishap()))
                .isNotEmpty()
                .allSatisfy(result -> assertThat(result.severity())
                        .as(result.mishap().id())
                        .isNotEqualTo(Severity.FIRE_OR_LOSS_OF_CONTROL));
    }

    private static boolean isOfADiode(Mishap mishap) {
        return mishap.id().startsWith("turned-round D") || mishap.id().startsWith("part-shorted D");
    }
}
