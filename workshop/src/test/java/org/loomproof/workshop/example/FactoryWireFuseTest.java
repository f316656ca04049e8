package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Plan;

/**
 * A factory wire that an added relay feeds is protected by the added fuse: that one is no larger than the factory's own, which
 * stands on the sheet. Common practice, no published source.
 */
class FactoryWireFuseTest {

    @ParameterizedTest
    @CsvSource({
        "circuits/parking-lamps-left-and-right-by-relays, 10",
        "circuits/parking-lamps-too-much-for-the-output, 15",
    })
    void theFuseBeforeAFactoryWireIsNoLargerThanTheFactorysOwn(String example, double factoryAmps) {
        Plan plan = PlannedExamples.job(ExampleFiles.root().resolve(example)).plan();
        assertThat(plan.parts())
                .filteredOn(AddedPart.Fuse.class::isInstance)
                .extracting(part -> ((AddedPart.Fuse) part).rating().value())
                .allMatch(amps -> amps <= factoryAmps)
                .contains(factoryAmps);
        assertThat(plan.cautions()).anyMatch(caution -> caution.key().equals("caution.fuse-too-small"));
    }
}
