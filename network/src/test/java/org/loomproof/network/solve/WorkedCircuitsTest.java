package org.loomproof.network.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.loomproof.network.TestNetwork;
import org.loomproof.network.part.DiodeModel;

/** Circuits with an answer from outside the project. Sources: {@code docs/sources.md}, by the id beside each test. */
class WorkedCircuitsTest {
    /** An ideal source stands behind 0.1 uΩ, which shifts these circuits by less than 1e-8 of any figure. */
    private static final double IDEAL = 1e-7;

    /** The worked answers carry at least eight figures. */
    private static final double PART = 2e-8;

    private static Offset<Double> near(double value) {
        return within(Math.abs(value) * PART + 1e-11);
    }

    @Test
    void c01MatchedLoadTakesAQuarterOfShortCircuitPower() {
        OperatingPoint point = network()
                .battery("v", "a", "0", 5.5, 1)
                .resistor("load", "a", "0", 1)
                .solved();
        assertThat(point.amps(id("load"))).isCloseTo(2.75, near(2.75));
        assertThat(point.watts(id("load"))).isCloseTo(7.5625, near(7.5625));
    }

    private static OperatingPoint diodeBehind(double volts, double ohms, double is, double vt) {
        return network()
                .battery("v", "a", "0", volts, ohms)
                .diode("d", "a", "0", new DiodeModel(is, vt / DiodeModel.THERMAL_VOLTS, 0))
                .solved();
    }

    @Test
    void c06DiodeBehindTenKiloohms() {
        OperatingPoint point = diodeBehind(7, 10e3, 6e-15, 0.0258);
        assertThat(point.volts(at("a"))).isCloseTo(0.65491641, within(2e-8));
        assertThat(point.amps(id("d"))).isCloseTo(0.00063450836, within(2e-11));
    }

    @Test
    void c07DiodeBehindOneKiloohmAtTwentyFiveMillivolts() {
        OperatingPoint point = diodeBehind(1, 1e3, 1e-15, 0.025);
        assertThat(point.volts(at("a"))).isCloseTo(0.66354338, within(2e-8));
        assertThat(point.amps(id("d"))).isCloseTo(0.00033645662, within(2e-11));
    }

    @Test
    void c08DiodeBehindOneKiloohmAtRoomTemperature() {
        OperatingPoint point = diodeBehind(1, 1e3, 1e-15, 0.02585);
        assertThat(point.volts(at("a"))).isCloseTo(0.68444586, within(2e-8));
        assertThat(point.amps(id("d"))).isCloseTo(0.00031555414, within(2e-11));
    }

    @Test
    void c09FixedDropIsRightToThePrecisionOfAFixedDrop() {
        // A junction scaled to drop 0.7 V at 9.3 mA is the real thing behind the book's fixed drop.
        double slope = DiodeModel.THERMAL_VOLTS;
        OperatingPoint point = network()
                .battery("v", "a", "0", 10, IDEAL)
                .resistor("r", "a", "b", 1000)
                .diode("d", "b", "0", new DiodeModel(0.0093 / Math.expm1(0.7 / slope), 1, 0))
                .solved();
        assertThat(point.amps(id("r"))).isCloseTo(0.0093, within(1e-9));
    }

    @Test
    void c10TwoSourcesOnOneLoad() {
        OperatingPoint point = network()
                .battery("b1", "n", "0", 28, 4)
                .battery("b2", "n", "0", 7, 1)
                .resistor("load", "n", "0", 2)
                .solved();
        assertThat(point.volts(at("n"))).isCloseTo(8, near(8));
        assertThat(point.amps(id("load"))).isCloseTo(4, near(4));
        assertThat(point.amps(id("b1"))).isCloseTo(-5, near(5));
        assertThat(point.amps(id("b2"))).isCloseTo(1, near(1));
    }

    private static TestNetwork bridge(double bottomRight) {
        return network()
                .battery("v", "top", "0", 10, IDEAL)
                .resistor("r1", "top", "left", 100)
                .resistor("r2", "left", "0", 200)
                .resistor("r3", "top", "right", 150)
                .resistor("r4", "right", "0", bottomRight);
    }

    @Test
    void c11UnbalancedBridge() {
        OperatingPoint open = bridge(250).solved();
        assertThat(open.volts(at("left"))).isCloseTo(20.0 / 3, near(7));
        assertThat(open.volts(at("right"))).isCloseTo(6.25, near(7));
        OperatingPoint metered =
                bridge(250).resistor("meter", "left", "right", 50).solved();
        assertThat(metered.amps(id("meter"))).isCloseTo(1.0 / 505, near(0.1));
    }

    @Test
    void c12BalancedBridgeLeavesTheMeterStill() {
        OperatingPoint point =
                bridge(300).resistor("meter", "left", "right", 50).solved();
        assertThat(point.amps(id("meter"))).isCloseTo(0, within(1e-12));
    }

    @Test
    void c18BatterySagsUnderCranking() {
        OperatingPoint point = network()
                .battery("b", "plus", "0", 12.6, 0.02)
                .resistor("starter", "plus", "0", 8.6 / 200)
                .solved();
        assertThat(point.volts(at("plus"))).isCloseTo(8.6, near(8.6));
        assertThat(point.amps(id("starter"))).isCloseTo(200, near(200));
    }

    @Test
    void c19JumpStart() {
        OperatingPoint point = network()
                .battery("b1", "one", "0", 12.7, 0.01)
                .resistor("cable", "one", "two", 0.01)
                .battery("b2", "two", "0", 11, 0.03)
                .resistor("load", "two", "0", 0.1)
                .solved();
        assertThat(point.volts(at("two"))).isCloseTo(10.732142857, within(1e-9));
    }

    @Test
    void c20InteriorLampPullsASensingInputLow() {
        double slope = DiodeModel.THERMAL_VOLTS;
        double amps = 0.001196553925;
        OperatingPoint point = network()
                .battery("b", "supply", "0", 12.6, IDEAL)
                .resistor("pull-up", "supply", "input", 10e3)
                .diode("d", "input", "lamp", new DiodeModel(amps / Math.expm1(0.6 / slope), 1, 0))
                .resistor("lamp", "lamp", "0", 28.8)
                .solved();
        assertThat(point.amps(id("d"))).isCloseTo(amps, within(1e-10));
        assertThat(point.volts(at("input"))).isCloseTo(0.634460753, within(1e-7));
    }

    @Test
    void c21LoadedDivider() {
        TestNetwork divider = network()
                .battery("v", "a", "0", 12, IDEAL)
                .resistor("top", "a", "b", 1000)
                .resistor("bottom", "b", "0", 2200);
        assertThat(divider.solved().volts(at("b"))).isCloseTo(8.25, near(8.25));
        assertThat(divider.resistor("load", "b", "0", 4700).solved().volts(at("b")))
                .isCloseTo(7.197215777, within(1e-9));
    }
}
