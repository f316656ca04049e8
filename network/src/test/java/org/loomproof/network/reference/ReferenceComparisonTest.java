package org.loomproof.network.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.network.RandomNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Wakefulness;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.SolveOutcome.Settled;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;
import org.loomproof.testing.Sample;

/**
 * Random networks of 10 to 300 nodes against ngspice: voltages within 0.1 mV + 0.01 %, currents within 0.1 %. Contacts are
 * moved by this test from what the reference prints, from all released, all at once, so that contact positions are compared
 * too. A full run takes 500 networks, an everyday one a sample.
 */
class ReferenceComparisonTest {
    private static final int FULL = 500;
    private static final int SAMPLE = 60;
    /**
     * The reference bends the current of a blocked junction by up to 0.4 % of its saturation current (a cubic in place of the
     * exponential from three slopes on): 60 pA. Tied by 10 MΩ, a node behind such a diode would compare that and nothing else.
     */
    private static final double TIE_OHMS = 100e3;

    private static final int MOST_MOVES = 60;

    @TempDir
    Path folder;

    /** One network on its way to rest in the reference's hands. */
    private static final class Run {
        final long seed;
        final Network network;
        final Setting setting;
        final Set<Set<PartId>> met = new HashSet<>();
        Set<PartId> passed = Set.of();
        Map<String, Double> printed = new HashMap<>();
        Deck deck;
        boolean atRest;
        boolean inCircle;
        boolean lost;

        Run(long seed) {
            this.seed = seed;
            this.network = RandomNetwork.of(seed, 10 + (int) (seed * 37 % 291), TIE_OHMS);
            this.setting = RandomNetwork.setting(network, seed);
            this.deck = Deck.of(network, setting, passed);
        }

        boolean goesOn() {
            return !atRest && !inCircle && !lost;
        }

        double volts(Node node) {
            return node.equals(Node.CHASSIS) ? 0 : printed.getOrDefault(Deck.name(network, node), Double.NaN);
        }

        void take(Map<String, Double> result) {
            printed = result;
            lost = network.nodes().stream().anyMatch(node -> Double.isNaN(volts(node)));
            if (lost) {
                return;
            }
            Set<PartId> called = called();
            atRest = called.equals(passed);
            inCircle = !atRest && (!met.add(passed) || met.size() > MOST_MOVES);
            passed = called;
            deck = atRest ? deck : Deck.of(network, setting, passed);
        }

        private Set<PartId> called() {
            Set<PartId> called = new HashSet<>();
            for (Part part : network.parts()) {
                boolean now = passed.contains(part.id());
                boolean calls = switch (part) {
                    case Relay r -> {
                        double coil = Math.abs(volts(r.coilPlus()) - volts(r.coilMinus()));
                        yield now ? coil > r.dropOutVolts() : coil >= r.pullInVolts();
                    }
                    case LowSideOutput o -> awake(o.wakefulness(), volts(o.supply()) - volts(o.ground()), now);
                    case HighSideOutput o -> awake(o.wakefulness(), volts(o.supply()) - volts(o.ground()), now);
                    default -> false;
                };
                if (calls) {
                    called.add(part.id());
                }
            }
            return called;
        }

        private static boolean awake(Wakefulness wakefulness, double volts, boolean now) {
            return now ? volts > wakefulness.sleepsAtVolts() : volts >= wakefulness.wakesAtVolts();
        }
    }

    @Test
    void operatingPointsAgree() {
        NumericalReference.assumeInstalled();
        int count = Sample.count(SAMPLE, FULL);
        List<Run> runs = new ArrayList<>();
        for (long seed = 1; seed <= count; seed++) {
            runs.add(new Run(seed));
        }
        for (List<Run> going = runs;
                !going.isEmpty();
                going = going.stream().filter(Run::goesOn).toList()) {
            List<Map<String, Double>> results = NumericalReference.solve(
                    folder, going.stream().map(run -> run.deck).toList());
            for (int k = 0; k < going.size(); k++) {
                going.get(k).take(results.get(k));
            }
        }
        List<Long> lost =
                runs.stream().filter(run -> run.lost).map(run -> run.seed).toList();
        List<Long> circling =
                runs.stream().filter(run -> run.inCircle).map(run -> run.seed).toList();
        System.out.printf(
                "compared with ngspice: %d networks, %d at rest, in a circle %s, reference did not converge %s%n",
                count, count - lost.size() - circling.size(), circling, lost);
        assertThat(lost.size()).isLessThanOrEqualTo(count / 50);
        runs.stream().filter(run -> !run.lost).forEach(ReferenceComparisonTest::compare);
    }

    private static void compare(Run run) {
        SolveOutcome outcome = Solver.of(run.network, SolverOptions.USUAL.withoutOtherStablePoints())
                .solve(run.setting);
        if (run.inCircle) {
            assertThat(outcome).as("seed %s", run.seed).isNotInstanceOf(Settled.class);
            return;
        }
        OperatingPoint point = outcome.settledPoint();
        for (Node node : run.network.nodes()) {
            double expected = run.volts(node);
            assertThat(point.volts(node))
                    .as("seed %s, volts at %s", run.seed, node)
                    .isCloseTo(expected, within(1e-4 + 1e-4 * Math.abs(expected)));
        }
        run.deck.currents().forEach((part, vector) -> {
            assertThat(run.printed)
                    .as("seed %s, %s", run.seed, run.network.part(part))
                    .containsKey(vector);
            double expected = run.printed.getOrDefault(vector, Double.NaN);
            assertThat(point.amps(part))
                    .as("seed %s, amps through %s", run.seed, part)
                    .isCloseTo(expected, within(1e-6 + 1e-3 * Math.abs(expected)));
        });
        for (Part part : run.network.parts()) {
            if (part instanceof Relay) {
                assertThat(point.relayPosition(part.id()) == RelayPosition.PULLED_IN)
                        .isEqualTo(run.passed.contains(part.id()));
            }
        }
    }
}
