package org.loomproof.network.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.id;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.network.RandomNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.solve.SolveOutcome.Settled;

/** What holds for every network there is, tried on networks drawn from printed seeds. */
class PhysicalLawsTest {
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void currentsSumToZeroAtEveryNodeAndPowerInTheWhole(long seed) {
        Network network = RandomNetwork.of(seed, 150);
        Solver solver = Solver.of(network);
        int settled = 0;
        for (long draw = 0; draw < 10; draw++) {
            if (solver.solve(RandomNetwork.setting(network, seed * 100 + draw))
                    instanceof Settled(OperatingPoint point, var o)) {
                settled++;
                assertCurrentsSumToZero(point);
                double watts = 0;
                double given = 0;
                for (Part part : network.parts()) {
                    double taken = point.watts(part.id());
                    watts += taken;
                    given += Math.max(0, -taken);
                    boolean source = part instanceof Battery || part instanceof PulsedSource;
                    assertThat(source || taken > -1e-6)
                            .as("%s gives power", part)
                            .isTrue();
                }
                assertThat(watts).isCloseTo(0, within(1e-6 + 1e-6 * given));
                assertThat(point.kirchhoffResidualAmps()).isLessThan(1e-3);
            }
        }
        assertThat(settled).isPositive();
    }

    private static void assertCurrentsSumToZero(OperatingPoint point) {
        Map<Node, Double> sum = new HashMap<>();
        Map<Node, Double> largest = new HashMap<>();
        for (Part part : point.network().parts()) {
            for (Pin pin : part.pins()) {
                double amps = point.ampsInto(part.id(), pin.name());
                sum.merge(pin.node(), amps, Double::sum);
                largest.merge(pin.node(), Math.abs(amps), Math::max);
            }
        }
        sum.forEach((node, amps) -> assertThat(amps)
                .as("sum at %s", node)
                .isCloseTo(0, within(1e-6 + 1e-6 * largest.getOrDefault(node, 0.0))));
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25})
    void aLinearNetworkScalesAndAddsUp(long seed) {
        Network base = RandomNetwork.linear(seed, 80);
        Node far = base.nodes().getLast();
        Network network = Network.builder()
                .addAll(base.parts())
                .add(new Battery(id("second"), far, Node.CHASSIS, 5, 3))
                .build();
        PartId first = network.parts().getFirst().id();
        Solver solver = Solver.of(network);
        Setting dead = network.atRest().emf(first, 0).emf(id("second"), 0);
        OperatingPoint one = solver.solve(dead.emf(first, 12)).settledPoint();
        OperatingPoint two = solver.solve(dead.emf(id("second"), 5)).settledPoint();
        OperatingPoint both =
                solver.solve(dead.emf(first, 24).emf(id("second"), 5)).settledPoint();
        for (Node node : network.nodes()) {
            assertThat(both.volts(node)).isCloseTo(2 * one.volts(node) + two.volts(node), within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35})
    void aLinearNetworkIsReciprocal(long seed) {
        // The current a source at one place sends through a dead source at another equals that with the places
        // exchanged.
        Network base = RandomNetwork.linear(seed, 80);
        Node left = base.nodes().get(5);
        Node right = base.nodes().get(60);
        Network network = Network.builder()
                .addAll(base.parts())
                .add(new Battery(id("left"), left, Node.CHASSIS, 0, 2))
                .add(new Battery(id("right"), right, Node.CHASSIS, 0, 2))
                .build();
        PartId supply = network.parts().getFirst().id();
        Solver solver = Solver.of(network);
        Setting dead = network.atRest().emf(supply, 0);
        double there = solver.solve(dead.emf(id("left"), 10)).settledPoint().amps(id("right"));
        double back = solver.solve(dead.emf(id("right"), 10)).settledPoint().amps(id("left"));
        assertThat(there).isCloseTo(back, within(1e-12 + 1e-9 * Math.abs(there)));
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44, 45})
    void partsMayBeAddedInAnyOrder(long seed) {
        Network network = RandomNetwork.of(seed, 90);
        List<Part> shuffled = new ArrayList<>(network.parts());
        Collections.shuffle(shuffled, new Random(seed));
        Network other = Network.builder().addAll(shuffled).build();
        Setting setting = RandomNetwork.setting(network, seed);
        Setting same = other.atRest();
        for (Part part : network.parts()) {
            same = same.like(setting, part.id());
        }
        SolveOutcome outcome = Solver.of(network).solve(setting);
        SolveOutcome again = Solver.of(other).solve(same);
        assertThat(again).hasSameClassAs(outcome);
        if (outcome instanceof Settled(OperatingPoint point, var ignored)) {
            for (Node node : network.nodes()) {
                assertThat(again.settledPoint().volts(node)).isCloseTo(point.volts(node), within(1e-6));
            }
        }
    }
}
