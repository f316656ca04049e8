package org.loomproof.network.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Breakdown;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.part.Suppressor;

/** Supplies as ISO 16750-2 has them (voltages and times READ in a device maker's note and a journal's table, see docs/sources.md). */
class SupplyProfilesTest {
    /** Level I: 14 V, in 5 ms to 8 V for 15 ms, in 50 ms to 9.5 V, held. */
    private static Waveform starting(double lowest, double plateau) {
        return Waveform.of(0.1, 14, 0.105, lowest, 0.12, lowest, 0.17, plateau, 0.5, plateau);
    }

    private static Network relayAndHeldUpLogic() {
        return network()
                .battery("battery", "plus", "0", 14, 0.02)
                .part(new Relay(
                                id("k"),
                                at("plus"),
                                at("0"),
                                85,
                                7,
                                4,
                                List.of(Contact.make(at("plus"), at("out"))),
                                2e-3)
                        .timed(0.25, 4e-3, 3e-3))
                .resistor("load", "out", "0", 12)
                .diode("hold", "plus", "logic", DiodeModel.SILICON_1A)
                .part(new Capacitor(id("hold-up"), at("logic"), at("0"), 470e-6, 0.05))
                .resistor("controller", "logic", "0", 150)
                .build();
    }

    private static Trace started(double lowest, double plateau) {
        Network network = relayAndHeldUpLogic();
        Timeline timeline = Timeline.settled(network.atRest()).supply(id("battery"), starting(lowest, plateau));
        return TimeSolver.of(network).run(timeline, 0.5).finishedTrace();
    }

    /** A coil that lets go below 4 V holds at 8 V; the logic, 70.5 ms behind its diode, sags with the supply and not below it. */
    @Test
    void aRelayHoldsThroughStartingLevelOne() {
        Trace trace = started(8, 9.5);
        assertThat(trace.relayPosition(id("k"), 0.49)).isEqualTo(RelayPosition.PULLED_IN);
        assertThat(trace.events()).noneMatch(TimeEvent.ContactsMoved.class::isInstance);
        // (14 - drop) V at 0.1 s, then 470 uF into 150 Ω until the supply less its drop is higher again.
        double sag = trace.volts(at("logic"), 0.1) * Math.exp(-0.02 / (150 * 470e-6));
        assertThat(trace.volts(at("logic"), 0.12)).isCloseTo(sag, within(0.01 * sag));
    }

    /** The same relay with 3 V at the lowest (level III, MEMORY) lets go, and at a plateau of 5 V does not pull in again. */
    @Test
    void aRelayLetsGoWhereTheSupplyFallsBelowItsDropOut() {
        Trace trace = started(3, 5);
        assertThat(trace.relayPosition(id("k"), 0.49)).isEqualTo(RelayPosition.RELEASED);
        assertThat(trace.volts(at("out"), 0.49)).isCloseTo(0, within(1e-6));
    }

    /**
     * Load dump, test A: to 101 V in 10 ms behind 4 Ω, away within 400 ms. Without a clamp the load sees its share; a suppressor
     * of 36 V and 0.5 Ω takes what is above: i = (101 - v) / 4 - v / 50 where v = 36 + 0.5 (i - 0.01), so v = 43.0 V by hand.
     */
    @Test
    void aSuppressorHoldsALoadDump() {
        Waveform dump = Waveform.of(0.1, 13.5, 0.11, 101, 0.51, 13.5);
        Network bare = network()
                .battery("generator", "plus", "0", 13.5, 4)
                .resistor("load", "plus", "0", 50)
                .build();
        Network clamped = network()
                .battery("generator", "plus", "0", 13.5, 4)
                .resistor("load", "plus", "0", 50)
                .part(new Suppressor(id("tvs"), at("plus"), at("0"), new Breakdown(36, 0.01, 0.5)))
                .build();
        Trace open = TimeSolver.of(bare)
                .run(Timeline.settled(bare.atRest()).supply(id("generator"), dump), 0.6)
                .finishedTrace();
        Trace held = TimeSolver.of(clamped)
                .run(Timeline.settled(clamped.atRest()).supply(id("generator"), dump), 0.6)
                .finishedTrace();
        assertThat(open.voltsExtremes(at("plus")).greatest()).isCloseTo(101 * 50 / 54.0, within(1e-3));
        // v (1 + 0.5 (1/4 + 1/50)) = 36 - 0.005 + 0.5 x 101 / 4, and some 0.2 V of the bend at 14 A against 10 mA.
        double byHand = (36 - 0.005 + 0.5 * 101 / 4) / (1 + 0.5 * (0.25 + 0.02));
        assertThat(held.voltsExtremes(at("plus")).greatest()).isBetween(byHand, byHand + 0.25);
        assertThat(held.energy().holdsWithin(1e-3)).isTrue();
    }
}
