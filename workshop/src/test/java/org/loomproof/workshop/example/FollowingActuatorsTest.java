package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;

/** Actuators at doors without a motor follow the driven legs of the car's own motors, whatever those rest at. */
class FollowingActuatorsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"locks-legs-at-ground", "locks-legs-at-supply", "locks-legs-floating"})
    void actuatorsFollowLegsThatRestAnywhere(String example) {
        Brief brief = withActuators(example);

        PlannedJob job = new Weigher().weigh(brief);

        assertThat(job.plan().refusals()).isEmpty();
        assertThat(job.proof().results()).noneMatch(result -> result.verdict() instanceof Verdict.Broken);
        assertThat(job.plan().hookups())
                .filteredOn(hookup -> hookup instanceof Hookup.Connect connect
                        && connect.coupling().equals("coupling.legs-and-followers"))
                .hasSize(2);
        assertThat(job.plan().parts())
                .filteredOn(AddedPart.Load.class::isInstance)
                .hasSize(1);
    }

    /** Legs that rest at the supply are drawn as well, and hold; on the motor's own legs the car's switch would carry the actuator. */
    @Test
    void theOtherRestIsDrawnAndHoldsAndTheCarsOwnLegsAreCountedOut() {
        Brief brief = ExamplesAreReadTest.brief(ExampleFiles.root().resolve("circuits/locks-one-motor-and-actuators"));
        Plan other = Planner.plan(brief).plans().stream()
                .filter(plan -> plan.hookups().stream()
                        .anyMatch(hookup -> hookup instanceof Hookup.Connect connect
                                && connect.coupling().equals("coupling.legs-and-followers-at-supply")))
                .findFirst()
                .orElseThrow();

        assertThat(Prover.prove(brief, other).results())
                .noneMatch(result -> result.verdict() instanceof Verdict.Broken);
        assertThat(Planner.plan(brief).searches())
                .filteredOn(searched -> searched.circuits().isEmpty())
                .hasSize(2)
                .allSatisfy(searched ->
                        assertThat(searched.enumeration().leftOut()).containsEntry(LeftOut.CURRENT, 7 * 6_380_676L));
    }

    private Brief withActuators(String example) {
        return ReworkedExample.brief(
                ExampleFiles.root().resolve("circuits").resolve(example), folder, (file, text) -> switch (file) {
                    case "kit.yaml" ->
                        text.replace(
                                "behaviour:",
                                "extras:\n  - {name: rear actuator, kind: actuator, draws: 4.2 A}\n\nbehaviour:");
                    case "order.yaml" -> text.replace("wants: [locks]", "wants: [locks, lock-actuators]");
                    default -> text;
                });
    }
}
