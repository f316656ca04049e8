package org.loomproof.network.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.loomproof.network.TestNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Breakdown;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Inductor;
import org.loomproof.network.part.Motor;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.part.SelectorSwitch;
import org.loomproof.network.part.SelectorSwitch.Pole;
import org.loomproof.network.part.SteppedSwitch;
import org.loomproof.network.part.Suppressor;
import org.loomproof.network.part.Zener;

/** Parts whose interest lies in time, in a steady state. */
class SteadyPartsTest {
    private static final double EXACT = 1e-9;

    private static TestNetwork twelveVolts() {
        return network().battery("battery", "plus", "0", 12, 0.01);
    }

    private static OperatingPoint settled(Network network, Setting setting) {
        return Solver.of(network).solve(setting).settledPoint();
    }

    @Test
    void aCapacitorIsOpenAndTheNodeBehindItFloats() {
        OperatingPoint point = twelveVolts()
                .part(new Capacitor(id("c"), at("plus"), at("island"), 1e-6))
                .solved();
        assertThat(point.amps(id("c"))).isZero();
        assertThat(point.isFloating(at("island"))).isTrue();
    }

    @Test
    void anInductorIsItsWinding() {
        OperatingPoint point = twelveVolts()
                .part(Inductor.solenoid(id("solenoid"), at("plus"), at("0"), 12, 24, 0.05)) // 6 ohms
                .solved();
        assertThat(point.amps(id("solenoid"))).isCloseTo(12 / 6.01, within(EXACT));
    }

    @Test
    void aZenerHoldsItsVoltageAtItsTestCurrentAndConductsForwardsLikeADiode() {
        Part zener = new Zener(id("z"), at("0"), at("out"), DiodeModel.SILICON_1A, new Breakdown(6.2, 0.01, 5));
        OperatingPoint reverse = network()
                .battery("battery", "plus", "0", 6.2 + 0.01 * 1000, 1)
                .resistor("r", "plus", "out", 999)
                .part(zener)
                .solved();
        assertThat(reverse.volts(at("out"))).isCloseTo(6.2, within(1e-6));
        OperatingPoint forward = network()
                .battery("battery", "0", "plus", 12, 1)
                .resistor("r", "plus", "out", 10)
                .part(zener)
                .solved();
        assertThat(forward.volts(at("out"))).isBetween(-1.0, -0.85);
    }

    @Test
    void aZenerBelowItsVoltageLetsHardlyAnythingThrough() {
        OperatingPoint point = twelveVolts()
                .part(Zener.small(id("z"), at("0"), at("plus"), 15))
                .solved();
        assertThat(point.amps(id("z"))).isCloseTo(0, within(1e-8));
    }

    @Test
    void aSuppressorClampsAlikeInBothDirections() {
        Part suppressor = new Suppressor(id("s"), at("out"), at("0"), new Breakdown(27, 1e-3, 0.5));
        double up = network()
                .battery("battery", "plus", "0", 60, 10)
                .resistor("r", "plus", "out", 20)
                .part(suppressor)
                .solved()
                .volts(at("out"));
        double down = network()
                .battery("battery", "0", "plus", 60, 10)
                .resistor("r", "plus", "out", 20)
                .part(suppressor)
                .solved()
                .volts(at("out"));
        assertThat(up).isBetween(27.0, 28.5);
        assertThat(down).isCloseTo(-up, within(1e-6));
    }

    @Test
    void aMotorDrawsItsRunningCurrentAndStalledOnlyItsArmatureResists() {
        Network network = network()
                .battery("battery", "plus", "0", 12 + 1.5 * 0.01, 0.01)
                .part(new Motor(id("m"), at("plus"), at("0"), 1.2, 1e-3, 12, 1.5, 0.08))
                .build();
        assertThat(settled(network, network.atRest()).amps(id("m"))).isCloseTo(1.5, within(EXACT));
        double stalled = settled(network, network.atRest().stalled(id("m"))).amps(id("m"));
        assertThat(stalled).isCloseTo((12 + 0.015) / 1.21, within(2e-4 * stalled));
        assertThat(settled(network, network.atRest().stalled(id("m")).turning(id("m")))
                        .amps(id("m")))
                .isCloseTo(1.5, within(EXACT));
    }

    @Test
    void aShortedPartWithANodeInsideJoinsItsPins() {
        Network network = twelveVolts()
                .resistor("r", "plus", "out", 10)
                .part(new Motor(id("m"), at("out"), at("0"), 1.2, 1e-3, 12, 1.5, 0.08))
                .part(new Suppressor(id("s"), at("out"), at("0"), new Breakdown(27, 1e-3, 0.5)))
                .build();
        for (String each : List.of("m", "s")) {
            assertThat(settled(network, network.atRest().shorted(id(each))).volts(at("out")))
                    .isCloseTo(12 * Setting.SHORT_OHMS / 10.01, within(1e-5));
        }
    }

    @Test
    void aPulsedSourceStandsAtItsAverageAndAtItsExtremesWhenToldSo() {
        Network network = network()
                .part(new PulsedSource(id("p"), at("out"), at("0"), 12, 2, 100, 0.3, 1))
                .resistor("r", "out", "0", 1e6)
                .build();
        double share = 1e6 / (1e6 + 1);
        assertThat(settled(network, network.atRest()).volts(at("out"))).isCloseTo(5 * share, within(EXACT));
        assertThat(settled(network, network.atRest().emf(id("p"), 12)).volts(at("out")))
                .isCloseTo(12 * share, within(EXACT));
    }

    @Test
    void aSwitchOfTwoPolesMovesBothAtOnce() {
        Network network = twelveVolts()
                .part(new SelectorSwitch(
                        id("s"),
                        List.of(
                                Pole.of(at("plus"), at("a0"), at("a1"), at("both")),
                                new Pole(
                                        at("plus"),
                                        List.of(Optional.empty(), Optional.of(at("b1")), Optional.of(at("both"))))),
                        1e-3))
                .resistor("ra0", "a0", "0", 100)
                .resistor("ra1", "a1", "0", 100)
                .resistor("rb1", "b1", "0", 100)
                .resistor("rboth", "both", "0", 100)
                .build();
        assertThat(lit(network, 0)).containsExactly("a0");
        assertThat(lit(network, 1)).containsExactly("a1", "b1");
        assertThat(lit(network, 2)).containsExactly("both");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> network.atRest().selected(id("s"), 3))
                .withMessageContaining("positions 0 to 2");
        assertThatIllegalArgumentException().isThrownBy(() -> network.atRest().selected(id("ra0"), 0));
    }

    private static List<String> lit(Network network, int position) {
        OperatingPoint point = settled(network, network.atRest().selected(id("s"), position));
        return List.of("a0", "a1", "b1", "both").stream()
                .filter(node -> point.volts(at(node)) > 6)
                .toList();
    }

    @Test
    void aSteppedSwitchHasTheResistanceOfItsPosition() {
        Network network = twelveVolts()
                .resistor("pull-up", "plus", "sense", 1000)
                .part(new SteppedSwitch(
                        id("buttons"),
                        at("sense"),
                        at("0"),
                        List.of(OptionalDouble.empty(), OptionalDouble.of(1000), OptionalDouble.of(200))))
                .build();
        assertThat(settled(network, network.atRest()).volts(at("sense"))).isCloseTo(12, within(1e-3));
        assertThat(settled(network, network.atRest().selected(id("buttons"), 1)).volts(at("sense")))
                .isCloseTo(6, within(1e-3));
        assertThat(settled(network, network.atRest().selected(id("buttons"), 2)).volts(at("sense")))
                .isCloseTo(2, within(1e-3));
    }
}
