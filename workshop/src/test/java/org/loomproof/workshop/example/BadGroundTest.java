package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.trade.wire.Conductors;

/** What makes a ground a bad one: its resistance, by rule of thumb before the work and by the engine in the proof. */
class BadGroundTest {

    private static final Path THREE = ExampleFiles.root().resolve("circuits/ground-points-told-apart");

    /** The plan with that many ohms between the controller's ground lead and the body, as so much more of the same wire. */
    private static Plan groundedBy(Plan plan, double ohms) {
        List<AddedWire> wires = plan.wires().stream()
                .map(wire -> isGround(wire)
                        ? new AddedWire(
                                wire.id(),
                                wire.from(),
                                wire.to(),
                                new Metres(ohms / Conductors.ohmsPerMetre(wire.size())),
                                wire.size())
                        : wire)
                .toList();
        assertThat(wires).isNotEqualTo(plan.wires());
        return new Plan(plan.hookups(), plan.parts(), wires, plan.refusals(), plan.cautions());
    }

    private static boolean isGround(AddedWire wire) {
        return wire.from() instanceof End.OfLead && wire.to() instanceof End.Body;
    }

    /** Worked by hand in the example's README: 1.34 Ω; the painted screw of 1.5 Ω is beyond it, the engine's strap is not. */
    @ParameterizedTest
    @CsvSource({"0.09, true", "1.30, true", "1.38, false", "1.5, false"})
    void theProofBearsAGroundUpToWhereTheControllerLetsGo(double ohms, boolean bears) {
        Brief brief = ExamplesAreReadTest.brief(THREE);
        List<String> objections =
                Prover.listObjections(
                                brief, groundedBy(PlannedExamples.job(THREE).plan(), ohms))
                        .stream()
                        .map(ClaimResult::id)
                        .toList();

        assertThat(objections.isEmpty()).isEqualTo(bears);
        assertThat(objections.stream().anyMatch(id -> id.startsWith("does-its-work")))
                .isEqualTo(!bears);
    }

    /** A tenth of a volt at 2.012 A is 50 mΩ: common practice, no published source. */
    @Test
    void everyGroundPointOfTheSheetIsPassedOverForItsOwnReason() {
        Hookup ground = PlannedExamples.job(THREE).plan().hookups().stream()
                .filter(hookup -> hookup instanceof Hookup.Connect connect
                        && connect.coupling().equals("coupling.body-ground"))
                .findFirst()
                .orElseThrow();

        assertThat(ground.insteadOf().stream()
                        .map(phrase -> phrase.key() + " " + phrase.arguments().getFirst()))
                .containsExactlyInAnyOrder(
                        "lost.ground-bad painted-screw",
                        "lost.ground-doubtful engine-block",
                        "lost.ground-shared seat-rail");
    }
}
