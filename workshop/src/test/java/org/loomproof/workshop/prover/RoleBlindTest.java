package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Part;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Renamed;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.VehicleWiring;

/** Nothing is looked up by what a thing is called: with roles, colours and names gone, network and verdicts are as they were. */
class RoleBlindTest {

    private static final double SAME = 1e-6;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void namesDecideNothing(long seed) {
        check(Jobs.vanJob(), seed);
    }

    /** Not only what holds: a plan with a mistake in it breaks the same claims by the same amounts. */
    @ParameterizedTest
    @ValueSource(longs = {4})
    void namesDecideNothingOfABrokenPlan(long seed) {
        Jobs.Job van = Jobs.vanJob();
        Jobs.Job broken = van.with(Altered.rewired(van.plan(), "W11", "K1 87", "circuit starter after"));
        check(broken, seed);
        assertThat(Proven.proven(broken).notHolding()).isNotEmpty();
    }

    private static void check(Jobs.Job job, long seed) {
        Jobs.Job renamed = Renamed.job(job, seed);
        assertThat(kinds(VehicleWiring.fitted(renamed.brief(), renamed.plan(), Corner.TYPICAL)
                        .network()))
                .isEqualTo(kinds(VehicleWiring.fitted(job.brief(), job.plan(), Corner.TYPICAL)
                        .network()));
        List<ClaimResult> before = Prover.prove(job.brief(), job.plan()).results();
        List<ClaimResult> after = Prover.prove(renamed.brief(), renamed.plan()).results();
        assertThat(after).hasSameSizeAs(before);
        for (int k = 0; k < before.size(); k++) {
            assertThat(after.get(k).verdict().getClass())
                    .as(before.get(k).id())
                    .isEqualTo(before.get(k).verdict().getClass());
            assertThat(slack(after.get(k)))
                    .as(before.get(k).id())
                    .isCloseTo(slack(before.get(k)), within(SAME * Math.max(1, Math.abs(slack(before.get(k))))));
        }
    }

    /** Parts in their order, without their names. */
    private static List<String> kinds(Network network) {
        return network.parts().stream().map(RoleBlindTest::withoutNames).toList();
    }

    private static String withoutNames(Part part) {
        return part.toString()
                .replaceAll(
                        "(id|name|a|b|output|input|supply|ground|anode|cathode|plus|minus|coilPlus|coilMinus|common"
                                + "|make|rest)=(Optional\\[)?[^,\\]]*",
                        "$1");
    }

    private static double slack(ClaimResult result) {
        return switch (result.verdict()) {
            case Verdict.Holds holds -> holds.tightest().slack();
            case Verdict.Broken broken -> broken.worst().slack();
            case Verdict.Open open -> 0;
        };
    }
}
