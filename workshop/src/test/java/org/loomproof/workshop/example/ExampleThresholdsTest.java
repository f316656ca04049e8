package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.quantity.Ohms;

/**
 * In each example one resistance of the stock vehicle is moved until a claim breaks, such as a door contact that gets worse
 * until the open door is no longer read. Where that happens is worked out by hand in the example's README; the verdict must
 * flip within 3 % of it.
 */
class ExampleThresholdsTest {

    private static final double BY_HAND = 0.03;

    @ParameterizedTest
    @MethodSource("folders")
    void theVerdictFlipsWhereItWasWorkedOutByHand(Path folder) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        Plan plan = PlannedExamples.job(folder).plan();
        Expected.Threshold threshold = Expected.of(folder).threshold();

        double towardsBroken = threshold.brokenOver() ? BY_HAND : -BY_HAND;
        assertThat(objections(brief, plan, threshold, 1 - towardsBroken)).doesNotContain(threshold.claim());
        assertThat(objections(brief, plan, threshold, 1 + towardsBroken)).contains(threshold.claim());
    }

    static List<Path> folders() {
        return Sample.of(ExampleFiles.list(), 24);
    }

    private static List<String> objections(Brief brief, Plan plan, Expected.Threshold threshold, double times) {
        Figure<Ohms> ohms = Figured.ohms(threshold.flipsAtOhms() * times);
        Brief worse = Altered.steps(brief, step -> withResistance(step, threshold.element(), ohms));
        return Prover.listObjections(worse, plan).stream().map(r -> r.id()).toList();
    }

    private static PathStep withResistance(PathStep step, String element, Figure<Ohms> ohms) {
        if (!(step instanceof PathStep.Part part) || !part.id().value().equals(element)) {
            return step;
        }
        return switch (part) {
            case PathStep.Switch s -> new PathStep.Switch(s.id(), s.operatedBy(), s.closedAt(), ohms);
            case PathStep.Load l -> new PathStep.Load(l.id(), l.kind(), ohms);
            case PathStep.Resistor r -> new PathStep.Resistor(r.id(), ohms);
            case PathStep.Fuse f -> new PathStep.Fuse(f.id(), f.rating(), ohms);
            case PathStep.Coil c -> new PathStep.Coil(c.id(), c.relay(), ohms, c.pullIn(), c.dropOut());
            case PathStep.Wire w -> new PathStep.Wire(w.id(), ohms);
            default -> throw new IllegalArgumentException(element + " has no resistance to move");
        };
    }
}
