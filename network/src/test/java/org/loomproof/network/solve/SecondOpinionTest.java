package org.loomproof.network.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.network.RandomNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Relay;
import org.loomproof.network.solve.SolveOutcome.Settled;

/** The fast solver against a dense one that shares nothing with it. */
class SecondOpinionTest {
    private static final double SAME_VOLTS = 1e-6;
    private static final SolverOptions PLAIN = SolverOptions.USUAL.withoutOtherStablePoints();

    @Test
    void fastAndDenseAgreeOnRandomNetworks() {
        int circles = 0;
        int networks = 60;
        for (long seed = 1; seed <= networks; seed++) {
            Network network = RandomNetwork.of(seed, 10 + (int) (seed % 45));
            Solver solver = Solver.of(network, PLAIN);
            for (long draw = 0; draw < 4; draw++) {
                Setting setting = RandomNetwork.setting(network, 1000 * seed + draw);
                SolveOutcome outcome = solver.solve(setting);
                Optional<DenseOpinion> opinion = DenseOpinion.afterPowerUp(network, setting);
                assertThat(outcome instanceof Settled)
                        .as("settled, seed %s draw %s: %s", seed, draw, outcome)
                        .isEqualTo(opinion.isPresent());
                circles += opinion.isEmpty() ? 1 : 0;
                if (opinion.isPresent()) {
                    assertSame(outcome.settledPoint(), opinion.get(), seed + "/" + draw);
                }
            }
        }
        // Most draws must compare voltages, or the test says little.
        assertThat(circles).isLessThan(networks);
    }

    private static void assertSame(OperatingPoint point, DenseOpinion opinion, String where) {
        for (Node node : point.network().nodes()) {
            assertThat(point.volts(node))
                    .as("%s at %s", where, node)
                    .isCloseTo(opinion.volts(node), within(SAME_VOLTS));
        }
    }

    @Test
    void theAnswerDoesNotDependOnWhatWasSolvedBefore() {
        for (long seed = 1; seed <= 20; seed++) {
            Network network = RandomNetwork.of(seed, 60);
            List<Setting> settings = new ArrayList<>();
            for (long draw = 0; draw < 30; draw++) {
                settings.add(RandomNetwork.setting(network, 7 * seed + draw));
            }
            Solver forward = Solver.of(network, PLAIN);
            Solver backward = Solver.of(network, PLAIN);
            List<SolveOutcome> one = settings.stream().map(forward::solve).toList();
            List<SolveOutcome> other = new ArrayList<>(
                            settings.reversed().stream().map(backward::solve).toList())
                    .reversed();
            for (int k = 0; k < settings.size(); k++) {
                SolveOutcome afresh = Solver.of(network, PLAIN).solve(settings.get(k));
                assertAlike(one.get(k), afresh);
                assertAlike(other.get(k), afresh);
            }
        }
    }

    private static void assertAlike(SolveOutcome outcome, SolveOutcome afresh) {
        if (!(afresh instanceof Settled)) {
            assertThat(outcome).hasSameClassAs(afresh);
            return;
        }
        OperatingPoint point = outcome.settledPoint();
        OperatingPoint expected = afresh.settledPoint();
        for (Node node : point.network().nodes()) {
            assertThat(point.volts(node)).isCloseTo(expected.volts(node), within(SAME_VOLTS));
        }
        for (Part part : point.network().parts()) {
            if (part instanceof Relay) {
                assertThat(point.relayPosition(part.id())).isEqualTo(expected.relayPosition(part.id()));
            }
        }
    }
}
