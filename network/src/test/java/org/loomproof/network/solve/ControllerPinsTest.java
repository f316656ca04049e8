package org.loomproof.network.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.network.TestNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LogicLevel;
import org.loomproof.network.part.LowSideOutput;

/** Outputs and inputs of a controller, alive, without supply and without ground. */
class ControllerPinsTest {
    private static TestNetwork controller(Drive drive) {
        return network()
                .battery("b", "30", "0", 12.6, 0.01)
                .contact("fuse", "30", "supply")
                .contact("ground", "own ground", "0")
                .resistor("electronics", "supply", "own ground", 630)
                .part(new LowSideOutput(id("low"), at("low lead"), at("supply"), at("own ground"), drive, true, true))
                .part(new HighSideOutput(
                        id("high"), at("high lead"), at("supply"), at("own ground"), drive, true, true));
    }

    private static final Network TRANSISTOR = controller(new Drive(0.4, 0, 0.5))
            .resistor("coil", "30", "low lead", 85)
            .resistor("heavy", "high lead", "0", 5)
            .build();

    @Test
    void aLowSideOutputSinksThroughItsOnResistance() {
        OperatingPoint point = Solver.of(TRANSISTOR)
                .solve(TRANSISTOR
                        .atRest()
                        .closed(id("fuse"))
                        .closed(id("ground"))
                        .on(id("low")))
                .settledPoint();
        assertThat(point.isAwake(id("low"))).isTrue();
        // Square law at Vs = 2 * 0.4 * 0.5 = 0.4 V: i = v / 0.4 (1 - v / 0.8) (1 + 0.001 v) and i = (12.6 - v) / 85.01.
        double v = point.volts(at("low lead"), at("own ground"));
        assertThat(point.amps(id("low"))).isCloseTo(v / 0.4 * (1 - v / 0.8) * (1 + 0.001 * v), within(1e-8));
        assertThat(point.amps(id("coil"))).isCloseTo((12.6 - 0.0645) / 85.01, within(1e-5));
    }

    @Test
    void anOverloadedOutputHoldsItsLimit() {
        OperatingPoint point = Solver.of(TRANSISTOR)
                .solve(TRANSISTOR
                        .atRest()
                        .closed(id("fuse"))
                        .closed(id("ground"))
                        .on(id("high")))
                .settledPoint();
        // 12.6 V into 5 Ω would be 2.5 A; the limit is 0.5 A and grows by a thousandth a volt across the output.
        double across = point.volts(at("supply"), at("high lead"));
        assertThat(point.amps(id("heavy"))).isCloseTo(0.5 * (1 + 0.001 * across), within(1e-8));
        assertThat(point.volts(at("high lead"))).isCloseTo(2.525, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.2", "0.15, 0.9", "0.02, 0.9"})
    void aBipolarOutputDropsItsSaturationVoltage(double loadAmps, double saturationVolts) {
        Network network = controller(new Drive(0.1, saturationVolts, 0.5))
                .resistor("load", "30", "low lead", 12 / loadAmps)
                .build();
        OperatingPoint point = Solver.of(network)
                .solve(network.atRest().closed(id("fuse")).closed(id("ground")).on(id("low")))
                .settledPoint();
        double amps = point.amps(id("load"));
        double junction = 0.025852 * Math.log1p(amps / (0.5 / Math.expm1(saturationVolts / 0.025852)));
        assertThat(point.volts(at("low lead"), at("own ground"))).isCloseTo(junction + 0.1 * amps, within(0.003));
    }

    @Test
    void withoutSupplyAnOutputIsOffWhateverIsAsked() {
        Network network = controller(new Drive(0.4, 0, 0.5))
                .resistor("lamp", "high lead", "0", 100)
                .resistor("signal", "30", "low lead", 10e3)
                .build();
        OperatingPoint point = Solver.of(network)
                .solve(network.atRest().closed(id("ground")).on(id("low")).on(id("high")))
                .settledPoint();
        assertThat(point.isAwake(id("low"))).isFalse();
        // The signal lead feeds the dead controller through its clamp; the output itself does not drive.
        assertThat(point.amps(id("signal"))).isCloseTo((12.6 - 0.5) / 10_630, within(1e-4));
    }

    @Test
    void aControllerThatLivesOnItsOwnLeadChattersWhenItPullsThatLeadDown() {
        assertThat(Solver.of(TRANSISTOR)
                        .solve(TRANSISTOR.atRest().closed(id("ground")).on(id("low"))))
                .isEqualTo(new SolveOutcome.Chattering(List.of(id("low"), id("high"))));
    }

    @Test
    void aDeadControllersClampIsFedFromTheLead() {
        // Fuse out: 12.6 V behind 85 Ω feeds the clamp diode and so the electronics, 630 Ω to ground.
        OperatingPoint point = Solver.of(TRANSISTOR)
                .solve(TRANSISTOR.atRest().closed(id("ground")))
                .settledPoint();
        double amps = point.amps(id("coil"));
        assertThat(amps).isCloseTo((12.6 - 0.6) / (85 + 630), within(2e-3));
        assertThat(point.amps(id("electronics"))).isCloseTo(amps, within(1e-6));
        assertThat(point.isAwake(id("low"))).isTrue(); // 10.6 V reach the supply pin backwards
    }

    @Test
    void withoutGroundTheBodyDiodeLiftsALead() {
        // Ground lost, supply present: current runs supply, electronics, body diode, lead, and into the low-side load.
        Network network = controller(new Drive(0.4, 0, 0.5))
                .resistor("line", "low lead", "0", 1000)
                .build();
        OperatingPoint point =
                Solver.of(network).solve(network.atRest().closed(id("fuse"))).settledPoint();
        double amps = point.amps(id("line"));
        assertThat(amps).isCloseTo((12.6 - 0.6) / 1630, within(1e-4));
        assertThat(point.volts(at("own ground"))).isGreaterThan(point.volts(at("low lead")) + 0.5);
    }

    @Test
    void anInputReadsItsLeadAgainstItsOwnGround() {
        Network network = network()
                .battery("b", "30", "0", 12.6, 0.01)
                .contact("door", "trigger", "0")
                .pulledUpInput("in", "trigger", "30", "0", 10e3)
                .build();
        Solver solver = Solver.of(network);
        OperatingPoint shut = solver.solve(network.atRest()).settledPoint();
        assertThat(shut.level(id("in"))).isEqualTo(LogicLevel.HIGH);
        assertThat(shut.volts(at("trigger"))).isCloseTo(12.6, within(1e-6));
        OperatingPoint open = solver.solve(network.atRest().closed(id("door"))).settledPoint();
        assertThat(open.level(id("in"))).isEqualTo(LogicLevel.LOW);
        assertThat(open.amps(id("door"))).isCloseTo(12.6 / 10e3, within(1e-6));
    }

    @Test
    void anInputOfADeadControllerPullsItsLeadDownThroughItsProtection() {
        Network network = network()
                .battery("b", "30", "0", 12.6, 0.01)
                .resistor("factory pull-up", "30", "trigger", 10e3)
                .resistor("electronics", "supply", "0", 100)
                .pulledUpInput("in", "trigger", "supply", "0", 10e3)
                .build();
        OperatingPoint point = Solver.of(network).solve(network.atRest()).settledPoint();
        assertThat(point.volts(at("trigger"))).isBetween(0.6, 0.9);
        assertThat(point.level(id("in"))).isEqualTo(LogicLevel.LOW);
    }
}
