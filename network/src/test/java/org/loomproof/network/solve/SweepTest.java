package org.loomproof.network.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.loomproof.network.RandomNetwork;
import org.loomproof.network.TestNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Switch;
import org.loomproof.network.solve.SolveOutcome.Settled;

/** Many settings in one go against each by itself. */
class SweepTest {
    private static final double SAME_VOLTS = 1e-6;

    /** Draws with single faults among them, more than one leg. */
    private static List<Setting> settings(Network network, long seed, int count) {
        List<Setting> settings = new ArrayList<>();
        Random random = new Random(seed);
        for (int k = 0; k < count; k++) {
            Setting setting = RandomNetwork.setting(network, 31 * seed + k / 3);
            Part part = network.parts().get(random.nextInt(network.parts().size()));
            settings.add(k % 3 == 0 ? setting : setting.broken(part.id()));
        }
        return settings;
    }

    @Test
    void twoThreadsGiveTheSameBitsAsOne() {
        for (long seed = 1; seed <= 3; seed++) {
            Network network = RandomNetwork.of(seed, 40);
            List<Setting> settings = settings(network, seed, 1300);
            Sweep sweep = Sweep.of(network);
            List<SolveOutcome> one = sweep.solve(settings);
            List<SolveOutcome> two = sweep.solve(settings, 2, Function.identity());
            for (int k = 0; k < settings.size(); k++) {
                assertThat(two.get(k)).hasSameClassAs(one.get(k));
                if (one.get(k) instanceof Settled(OperatingPoint point, var ignored)) {
                    OperatingPoint other = two.get(k).settledPoint();
                    for (Node node : network.nodes()) {
                        assertThat(Double.doubleToRawLongBits(other.volts(node)))
                                .isEqualTo(Double.doubleToRawLongBits(point.volts(node)));
                    }
                    for (Part part : network.parts()) {
                        assertThat(other.amps(part.id())).isEqualTo(point.amps(part.id()));
                    }
                }
            }
        }
    }

    @Test
    void aSweepGivesWhatEachSettingGivesAfreshInWhateverOrder() {
        for (long seed = 11; seed <= 22; seed++) {
            Network network = RandomNetwork.of(seed, 25 + (int) seed);
            List<Setting> settings = settings(network, seed, 90);
            List<Integer> shuffled =
                    new ArrayList<>(IntStream.range(0, 90).boxed().toList());
            Collections.shuffle(shuffled, new Random(seed));
            Sweep sweep = Sweep.of(network);
            List<SolveOutcome> given = sweep.solve(settings);
            List<SolveOutcome> other =
                    sweep.solve(shuffled.stream().map(settings::get).toList());
            for (int k = 0; k < settings.size(); k++) {
                SolveOutcome afresh = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints())
                        .solve(settings.get(k));
                assertAlike(given.get(k), afresh);
                assertAlike(other.get(shuffled.indexOf(k)), afresh);
            }
        }
    }

    static void assertAlike(SolveOutcome outcome, SolveOutcome afresh) {
        if (!(afresh instanceof Settled(OperatingPoint expected, var ignored))) {
            assertThat(outcome).hasSameClassAs(afresh);
            return;
        }
        OperatingPoint point = outcome.settledPoint();
        assertThat(point.setting()).isEqualTo(expected.setting());
        for (Node node : point.network().nodes()) {
            assertThat(point.volts(node)).isCloseTo(expected.volts(node), within(SAME_VOLTS));
        }
        for (Part part : point.network().parts()) {
            if (part instanceof Relay) {
                assertThat(point.relayPosition(part.id())).isEqualTo(expected.relayPosition(part.id()));
            }
        }
    }

    @Test
    void everyCombinationOfSwitchesIsWalkedByOneThrowAtATime() {
        TestNetwork wired = network().battery("b", "plus", "0", 12, 1);
        for (int k = 0; k < 10; k++) {
            wired.contact("s" + k, "plus", "n" + k).resistor("r" + k, "n" + k, "0", 10 + k);
        }
        Network network = wired.build();
        List<Setting> settings = new ArrayList<>();
        for (int bits = 0; bits < 1024; bits++) {
            Setting setting = network.atRest();
            for (int k = 0; k < 10; k++) {
                setting = (bits >> k & 1) == 1 ? setting.closed(id("s" + k)) : setting;
            }
            settings.add(setting);
        }
        Collections.shuffle(settings, new Random(4));
        int[] order = SweepOrder.of(settings);
        assertThat(IntStream.of(order).distinct().count()).isEqualTo(1024);
        for (int k = 1; k < order.length; k++) {
            Setting one = settings.get(order[k - 1]);
            Setting next = settings.get(order[k]);
            assertThat(network.parts().stream()
                            .filter(part -> one.isOn(part.id()) != next.isOn(part.id()))
                            .count())
                    .isEqualTo(1);
        }
        // And what is kept is kept in the order given.
        Map<Setting, Double> amps = new HashMap<>();
        List<Double> kept = Sweep.of(network)
                .solve(settings, 2, outcome -> outcome.settledPoint().amps(id("b")));
        for (int k = 0; k < settings.size(); k++) {
            amps.put(settings.get(k), kept.get(k));
        }
        double siemens = 0;
        Setting setting = network.atRest();
        for (int k = 0; k < 10; k++) {
            setting = setting.closed(id("s" + k));
            siemens += 1 / (10 + k + contactOhms(network, k));
            assertThat(amps.get(setting)).isCloseTo(-12 / (1 + 1 / siemens), within(1e-9));
        }
    }

    private static double contactOhms(Network network, int k) {
        return ((Switch) network.part(id("s" + k))).closedOhms();
    }

    @Test
    void nothingToSolveAndNoThreadsAreToldApart() {
        Network network = network().battery("b", "plus", "0", 12, 1).build();
        assertThat(Sweep.of(network).solve(List.of())).isEmpty();
        assertThatThrownBy(() -> Sweep.of(network).solve(List.of(), 0, Function.identity()))
                .isInstanceOf(IllegalArgumentException.class);
        Network other = network().battery("b", "plus", "0", 12, 1).build();
        List<Setting> foreign = new ArrayList<>(Collections.nCopies(2000, other.atRest()));
        assertThatThrownBy(() -> Sweep.of(network).solve(foreign, 2, Function.identity()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
