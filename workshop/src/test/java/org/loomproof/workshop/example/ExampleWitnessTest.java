package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.FewerSteps;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Corner;

/**
 * No plan of an example is broken, so that its witnesses are those of faults and slips: none has a step too many. Where a fuse opens
 * first, or a figure stands at its end, the witness is of another car than the damaged one at typical figures, and those are left
 * out here.
 */
class ExampleWitnessTest {

    @ParameterizedTest
    @MethodSource("folders")
    void noStepOfAWitnessIsTooMany(Path folder) {
        Plan plan = PlannedExamples.job(folder).plan();
        Brief brief = ExamplesAreReadTest.brief(folder).set(plan.settings());
        Vehicle planned = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        List<MishapResult> results =
                new ArrayList<>(PlannedExamples.faults(folder).results());
        results.removeIf(r -> !r.opens().isEmpty()
                || !r.undecided().isEmpty()
                || r.breaks().stream().allMatch(Break::takesEnds));
        int checked = 0;
        int tooLarge = 0;
        for (MishapResult result : Sample.of(results, 6)) {
            FewerSteps whole =
                    new FewerSteps(brief, plan, Optional.of(Damage.of(result.mishap(), plan, planned.wired())));
            for (Break each : result.breaks()) {
                if (each.takesEnds()) {
                    continue;
                }
                if (whole.isWhole()) {
                    whole.check(each.claim(), each.witness());
                    checked++;
                } else {
                    tooLarge++;
                }
            }
        }
        Note.that(ExampleFiles.root().relativize(folder) + ": witnesses without a step too many " + checked
                + ", in a vehicle too large to go through " + tooLarge);
        assertThat(checked + tooLarge > 0 || results.isEmpty()).isTrue();
    }

    static List<Path> folders() {
        return Sample.of(ExampleFiles.list(), 3);
    }
}
