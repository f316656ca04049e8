package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Part;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Renamed;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.VehicleWiring;

/** Holds a proof to the network alone: with roles, colours and names gone, network, verdicts and margins are as they were. */
public final class Blindfold {

    private static final double SAME = 1e-6;

    private Blindfold() {}

    public static void check(Jobs.Job job, long seed) {
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
        return network.parts().stream().map(Blindfold::withoutNames).toList();
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
            case Verdict.Declared declared -> 0;
        };
    }
}
