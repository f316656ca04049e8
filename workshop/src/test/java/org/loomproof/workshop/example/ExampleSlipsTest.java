package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.fault.Slip;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.prover.AlarmBell;
import org.loomproof.workshop.weigh.Weigher;

/** Every slip with an added part of an example's plan is noticed by some claim, or the part is reported as not needed. */
class ExampleSlipsTest {

    private static final int SAMPLED = 5;

    @ParameterizedTest
    @MethodSource("examples")
    void everySlipIsNoticedOrThePartIsNotNeeded(Path folder) {
        Brief brief = ((Checked.Good<ReadBrief>) ExamplesAreReadTest.read(folder))
                .value()
                .brief();
        Plan plan = new Weigher().weigh(brief).plan();
        AlarmBell bell = AlarmBell.ring(brief, plan, Sample.of(Slip.list(plan), SAMPLED));
        System.out.println(bell.summary(folder.getFileName().toString()));
        assertThat(bell.missed()).isEmpty();
    }

    static List<Path> examples() {
        return ExampleFiles.list();
    }
}
