package org.loomproof.network.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Inductor;
import org.loomproof.network.part.Motor;

/** Circuits whose course in time has a formula. */
class ClosedFormsTest {
    private static final TimeOptions CLOSE = TimeOptions.USUAL.withTolerance(1e-7);

    /** Series resistance of a capacitor, contact and inner resistance of a source: what the formulas leave out. */
    private static final double TINY_OHMS = 1e-6;

    private static Network rc(double ohms, double farads) {
        return network()
                .battery("battery", "plus", "0", 0, TINY_OHMS)
                .resistor("r", "plus", "out", ohms)
                .part(new Capacitor(id("c"), at("out"), at("0"), farads))
                .build();
    }

    /** C05: G. Tuttle, EE 201 Circuits, RC transients practice problem, READ; answer COMPUTED, ln 4 x 22.5 ms. */
    @Test
    void c05ChargeFromANegativeStart() {
        Network network = rc(1500, 15e-6);
        Timeline timeline = Timeline.settled(network.atRest()).supply(id("battery"), Waveform.of(0, -10, 0, 4));
        Trace trace =
                TimeSolver.of(timeline.network()).run(timeline, 0.05, CLOSE).finishedTrace();
        assertThat(trace.volts(at("out"), 0)).isCloseTo(-10, within(1e-7));
        assertThat(trace.volts(at("out"), 0.031191623)).isCloseTo(0.5, within(1e-4));
        assertThat(trace.amps(id("r"), 0.031191623)).isCloseTo(0.002333333, within(1e-7));
    }

    /** C17: universal time constant table, COMPUTED: 63.2121 % after one, 99.3262 % after five. */
    @Test
    void c17UniversalTimeConstants() {
        Network network = rc(1000, 1e-6);
        Timeline timeline = Timeline.settled(network.atRest()).supply(id("battery"), Waveform.of(0, 0, 0, 1));
        Trace trace =
                TimeSolver.of(timeline.network()).run(timeline, 6e-3, CLOSE).finishedTrace();
        double[] percent = {63.2121, 86.4665, 95.0213, 98.1684, 99.3262};
        for (int n = 1; n <= 5; n++) {
            assertThat(100 * trace.volts(at("out"), n * 1e-3)).isCloseTo(percent[n - 1], within(5e-4));
        }
    }

    /** C03: textbook question, answered, READ (prints 0.2499 A); exact 0.249978 A. */
    @Test
    void c03RiseOfACoilsCurrent() {
        Network network = network()
                .battery("battery", "plus", "0", 15, TINY_OHMS)
                .contact("s", "plus", "coil")
                .part(new Inductor(id("l"), at("coil"), at("0"), 0.045, 60 - 1e-3))
                .build();
        Timeline timeline = Timeline.settled(network.atRest()).then(0, s -> s.closed(id("s")));
        Trace trace =
                TimeSolver.of(timeline.network()).run(timeline, 0.007, CLOSE).finishedTrace();
        assertThat(trace.amps(id("l"), 0.007)).isCloseTo(0.24997789, within(1e-6));
        // One time constant, C04's formula L / R with this coil's figures.
        assertThat(trace.amps(id("l"), 0.045 / 60)).isCloseTo(0.25 * (1 - Math.exp(-1)), within(1e-6));
    }

    /** C04: Ohio University, Basic EE synopsis, example 6-1, READ: 5 H and 1.2 Ω make 4.167 s. */
    @Test
    void c04TimeConstantOfACoil() {
        Network network = network()
                .battery("battery", "plus", "0", 0, TINY_OHMS)
                .part(new Inductor(id("l"), at("plus"), at("0"), 5, 1.2))
                .build();
        Timeline timeline = Timeline.settled(network.atRest()).supply(id("battery"), Waveform.of(0, 0, 0, 12));
        Trace trace = TimeSolver.of(network).run(timeline, 5, CLOSE).finishedTrace();
        assertThat(trace.amps(id("l"), 5 / 1.2)).isCloseTo(10 * (1 - Math.exp(-1)), within(1e-4));
    }

    /**
     * C16: worked example for a 12 V power relay, READ (prints 211.7 V with 43.6 mA rounded): 2.29 H and 275 Ω, whose current is
     * to fall to nothing in 0.5 ms, need 12 + 2.29 x 0.0436 / 0.0005 = 211.85 V across what cuts it. Put the other way round:
     * with that voltage across the contact the current is gone in 0.5 ms, along a straight line.
     */
    @Test
    void c16VoltageThatEndsACoilsCurrentInAStatedTime() {
        double amps = 12 / 275.0;
        double kick = 2.29 * amps / 0.0005;
        assertThat(12 + kick).isCloseTo(211.854545, within(1e-6));
        Network network = network()
                .battery("battery", "plus", "0", 12, TINY_OHMS)
                .part(new Inductor(id("l"), at("plus"), at("0"), 2.29, 275))
                .build();
        Timeline timeline = Timeline.settled(network.atRest())
                .supply(id("battery"), Waveform.of(1e-3, 12, 1e-3, 12 - kick, 1.5e-3, -kick));
        Trace trace = TimeSolver.of(network).run(timeline, 1.5e-3, CLOSE).finishedTrace();
        assertThat(trace.amps(id("l"), 1e-3)).isCloseTo(amps, within(1e-9));
        assertThat(trace.amps(id("l"), 1.25e-3)).isCloseTo(amps / 2, within(1e-6));
        assertThat(trace.amps(id("l"), 1.5e-3)).isCloseTo(0, within(1e-6));
    }

    /** C02: OpenStax College Physics, RL circuits example; inputs READ, 1.35335283 A COMPUTED. */
    @Test
    void c02DecayOfACoilsCurrent() {
        Network network = network()
                .battery("battery", "plus", "0", 30, TINY_OHMS)
                .contact("feed", "plus", "coil")
                .contact("short", "coil", "0")
                .part(new Inductor(id("l"), at("coil"), at("0"), 0.0075, 3 - 1e-3))
                .build();
        Timeline timeline = Timeline.settled(network.atRest().closed(id("feed")))
                .then(0, s -> s.closed(id("short")))
                .then(0, s -> s.open(id("feed")));
        Trace trace =
                TimeSolver.of(timeline.network()).run(timeline, 0.005, CLOSE).finishedTrace();
        // 30 V over 1 mΩ of contact and what is left of 3 Ω.
        assertThat(trace.amps(id("l"), 0)).isCloseTo(10, within(1e-4));
        assertThat(trace.amps(id("l"), 0.005)).isCloseTo(1.35335283, within(5e-5));
    }

    /** Series resonance, textbook formula: u = E (1 - exp(-a t) (cos w t + a / w sin w t)), a = R / 2L, w² = 1 / LC - a². */
    @ParameterizedTest
    @ValueSource(doubles = {2, 20, 100})
    void aSeriesResonanceRingsAndDiesAway(double ohms) {
        double henries = 10e-3;
        double farads = 1e-6;
        Network network = network()
                .battery("battery", "plus", "0", 12, TINY_OHMS)
                .contact("s", "plus", "coil")
                .part(new Inductor(id("l"), at("coil"), at("out"), henries, ohms - 1e-3))
                .part(new Capacitor(id("c"), at("out"), at("0"), farads))
                .resistor("leak", "out", "0", 1e9)
                .build();
        Timeline timeline = Timeline.settled(network.atRest()).then(0, s -> s.closed(id("s")));
        Trace trace =
                TimeSolver.of(timeline.network()).run(timeline, 3e-3, CLOSE).finishedTrace();
        double a = ohms / (2 * henries);
        double w = Math.sqrt(1 / (henries * farads) - a * a);
        for (double t = 0; t <= 3e-3; t += 0.37e-4) {
            double expected = 12 * (1 - Math.exp(-a * t) * (Math.cos(w * t) + a / w * Math.sin(w * t)));
            assertThat(trace.volts(at("out"), t)).as("at %s", t).isCloseTo(expected, within(12 * 1e-3));
        }
    }

    /** Armature without inductance: speed rises with one time constant, current falls from stall to run. */
    @Test
    void aMotorRunsUpAndItsCurrentFallsFromStallToRun() {
        Motor motor = new Motor(id("m"), at("out"), at("0"), 1.2 - 1e-3, 0, 12, 1.5, 0.08);
        Network network = network()
                .battery("battery", "plus", "0", 12, TINY_OHMS)
                .contact("s", "plus", "out")
                .part(motor)
                .build();
        Timeline timeline = Timeline.settled(network.atRest())
                .then(0.01, s -> s.closed(id("s")))
                .then(0.6, s -> s.stalled(id("m")));
        Trace trace =
                TimeSolver.of(timeline.network()).run(timeline, 0.7, CLOSE).finishedTrace();
        double run = 12 / (1.2 + 1 / motor.loadSiemens());
        double tau = motor.inertiaFarads() / (1 / 1.2 + motor.loadSiemens());
        for (double t = 0; t < 0.5; t += 0.017) {
            double expected = run + (10 - run) * Math.exp(-t / tau);
            assertThat(trace.amps(id("m"), 0.01 + t)).as("after %s", t).isCloseTo(expected, within(2e-4));
        }
        assertThat(trace.speedShare(id("m"), 0.01)).isCloseTo(0, within(1e-6));
        assertThat(trace.speedShare(id("m"), 0.59)).isCloseTo(1, within(2e-3));
        assertThat(trace.amps(id("m"), 0.69)).isCloseTo(10, within(5e-3));
        assertThat(trace.speedShare(id("m"), 0.69)).isCloseTo(0, within(1e-3));
    }
}
