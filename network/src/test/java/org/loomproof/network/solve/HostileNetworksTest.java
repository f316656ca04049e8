package org.loomproof.network.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.network.RandomNetwork;
import org.loomproof.network.TestNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Pin;
import org.loomproof.network.solve.SolveOutcome.NotConverged;

/** Networks nobody should wire. */
class HostileNetworksTest {
    @Test
    void aShortedSourceGivesItsShortCircuitCurrent() {
        OperatingPoint point = network()
                .battery("b", "plus", "0", 12.6, 0.01)
                .resistor("short", "plus", "0", 1e-6)
                .solved();
        assertThat(point.amps(id("short"))).isCloseTo(12.6 / 0.010001, within(1e-6));
    }

    @Test
    void sourcesInALoopFightThroughTheirInnerResistance() {
        OperatingPoint point = network()
                .battery("one", "plus", "0", 12.6, 1e-3)
                .battery("other", "plus", "0", -12.6, 1e-3)
                .solved();
        assertThat(point.volts(at("plus"))).isCloseTo(0, within(1e-9));
        assertThat(point.amps(id("other"))).isCloseTo(12_600, within(1e-6));
    }

    @Test
    void aSourceWithBothPinsOnOneNodeDisturbsNobody() {
        OperatingPoint point = network()
                .battery("b", "plus", "0", 12.6, 0.01)
                .battery("looped", "plus", "plus", 9, 0.1)
                .resistor("load", "plus", "0", 6.29)
                .solved();
        assertThat(point.amps(id("load"))).isCloseTo(2, within(1e-9));
        // Inside itself it is shorted: 9 V / 0.1 Ω come out of its plus pin and back into its minus pin.
        assertThat(point.amps(id("looped"))).isCloseTo(-90, within(1e-9));
        assertThat(point.ampsInto(id("looped"), "minus")).isCloseTo(90, within(1e-9));
    }

    @Test
    void floatingPartsAreFoundAndNamed() {
        OperatingPoint point = network()
                .battery("b", "plus", "0", 12.6, 0.01)
                .contact("open", "plus", "left")
                .resistor("r", "left", "right", 100)
                .battery("loose", "cell plus", "cell minus", 1.5, 1)
                .resistor("loose load", "cell plus", "cell minus", 2)
                .solved();
        assertThat(point.floatingIslands())
                .containsExactly(Set.of(at("left"), at("right")), Set.of(at("cell plus"), at("cell minus")));
        assertThat(point.isFloating(at("plus"))).isFalse();
        assertThat(point.isFloating(Node.CHASSIS)).isFalse();
        assertThat(point.volts(at("cell plus"), at("cell minus"))).isCloseTo(1, within(1e-9));
    }

    @Test
    void aNodeBehindABlockedIndicatorFloats() {
        OperatingPoint point = network()
                .battery("b", "plus", "0", 12.6, 0.01)
                .diode("d", "dark", "plus", DiodeModel.LED_RED)
                .solved();
        assertThat(point.isFloating(at("dark"))).isTrue();
    }

    @Test
    void aMicroohmBesideAGigaohmLosesNothing() {
        // 1 GΩ from the supply and 1 GΩ to ground, with 1 uΩ between: half the supply, 6.3 nA through the microohm.
        OperatingPoint point = network()
                .battery("b", "plus", "0", 12.6, 0.01)
                .resistor("top", "plus", "a", 1e9)
                .resistor("joint", "a", "b", 1e-6)
                .resistor("bottom", "b", "0", 1e9)
                .resistor("main", "plus", "0", 1e-2)
                .solved();
        double supply = 12.6 / 2;
        assertThat(point.volts(at("a"))).isCloseTo(supply / 2, within(1e-9));
        assertThat(point.amps(id("bottom"))).isCloseTo(supply / 2e9, within(1e-18));
    }

    @Test
    void decadesFromMicroohmToGigaohmInOneChain() {
        TestNetwork chain = network().battery("b", "n0", "0", 12, 1e-6);
        double total = 1e-6;
        for (int k = 0; k <= 15; k++) {
            double ohms = Math.pow(10, k - 6);
            chain.resistor("r" + k, "n" + k, k == 15 ? "0" : "n" + (k + 1), ohms);
            total += ohms;
        }
        OperatingPoint point = chain.solved();
        assertThat(point.amps(id("r15"))).isCloseTo(12 / total, within(1e-19));
    }

    @Test
    void diodesAcrossTheSupplyBothWaysConverge() {
        OperatingPoint point = network()
                .battery("b", "plus", "0", 12.6, 1e-3)
                .diode("right", "plus", "0", DiodeModel.SILICON_1A)
                .diode("wrong", "0", "plus", DiodeModel.SILICON_1A)
                .solved();
        assertThat(point.kirchhoffResidualAmps()).isLessThan(1e-3);
        assertThat(point.amps(id("right"))).isGreaterThan(100);
    }

    @Test
    void aHundredDiodesInARowConverge() {
        TestNetwork row = network().battery("b", "n0", "0", 60, 10);
        for (int k = 0; k < 100; k++) {
            row.diode("d" + k, "n" + k, k == 99 ? "0" : "n" + (k + 1), DiodeModel.SILICON_SIGNAL);
        }
        OperatingPoint point = row.solved();
        double each = point.volts(at("n0")) / 100;
        for (int k = 1; k < 100; k++) {
            assertThat(point.volts(at("n" + k))).isCloseTo(each * (100 - k), within(1e-5));
        }
    }

    @Test
    void aThousandNodesSettleWithinBoundedWork() {
        for (long seed = 1; seed <= 3; seed++) {
            Network network = RandomNetwork.of(seed, 1000);
            Solver solver = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints());
            for (int draw = 0; draw < 20; draw++) {
                assertThat(solver.solve(RandomNetwork.setting(network, seed * 50 + draw)))
                        .isNotInstanceOf(NotConverged.class);
            }
            assertThat(solver.work()).isLessThan(20 * 1500L * 40 * 6);
        }
    }

    @Test
    void everySingleFaultOfARandomNetworkEndsInWords() {
        for (long seed = 51; seed <= 60; seed++) {
            Network network = RandomNetwork.of(seed, 60);
            Solver solver = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints());
            Setting setting = RandomNetwork.setting(network, seed);
            for (Part part : network.parts()) {
                assertThat(solver.solve(setting.broken(part.id()))).isNotInstanceOf(NotConverged.class);
                if (part.pins().size() == 2 && !part.pins().getFirst().name().equals("plus")) {
                    assertThat(solver.solve(setting.shorted(part.id()))).isNotInstanceOf(NotConverged.class);
                }
            }
        }
    }

    @Test
    void anEmptyNetworkHasAPoint() {
        Network empty = Network.builder().build();
        assertThat(Solver.of(empty).solve(empty.atRest()).settledPoint().volts(Node.CHASSIS))
                .isZero();
    }

    @Test
    void aBrokenPartCarriesNothingAndAShortedOneIsAMilliohm() {
        Network network = network()
                .battery("b", "plus", "0", 12, 1)
                .diode("d", "plus", "out", DiodeModel.SILICON_1A)
                .resistor("load", "out", "0", 5)
                .build();
        Solver solver = Solver.of(network);
        OperatingPoint broken = solver.solve(network.atRest().broken(id("d"))).settledPoint();
        for (Part part : network.parts()) {
            for (Pin pin : part.pins()) {
                assertThat(broken.ampsInto(part.id(), pin.name())).isCloseTo(0, within(1e-12));
            }
        }
        OperatingPoint shorted = solver.solve(network.atRest().shorted(id("d"))).settledPoint();
        assertThat(shorted.amps(id("load"))).isCloseTo(12 / 6.001, within(1e-9));
        OperatingPoint whole = solver.solve(network.atRest()).settledPoint();
        assertThat(whole.volts(at("plus"), at("out"))).isBetween(0.9, 1.1);
    }
}
