package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.quantity.Ohms;

/**
 * In each example one contact of the stock vehicle gets worse until an open door is no longer read. The resistance at which
 * that happens is worked out by hand in the example's README; the verdict must flip within 3 % of it.
 */
class ExampleThresholdsTest {

    private static final double BY_HAND = 0.03;

    @ParameterizedTest
    @MethodSource("folders")
    void theVerdictFlipsWhereItWasWorkedOutByHand(Path folder) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        Plan plan = PlannedExamples.job(folder).plan();
        Expected.Threshold threshold = Expected.of(folder).threshold();

        assertThat(objections(brief, plan, threshold, 1 - BY_HAND)).doesNotContain(threshold.claim());
        assertThat(objections(brief, plan, threshold, 1 + BY_HAND)).contains(threshold.claim());
    }

    static Stream<Path> folders() {
        return ExampleFiles.list().stream();
    }

    private static List<String> objections(Brief brief, Plan plan, Expected.Threshold threshold, double times) {
        Figure<Ohms> ohms = Figured.ohms(threshold.flipsAtOhms() * times);
        Brief worse = Altered.steps(
                brief,
                step -> step instanceof PathStep.Switch contact
                                && contact.id().value().equals(threshold.contact())
                        ? new PathStep.Switch(contact.id(), contact.operatedBy(), contact.closedAt(), ohms)
                        : step);
        return Prover.listObjections(worse, plan).stream().map(r -> r.id()).toList();
    }
}
