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
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.solve.SolveOutcome.Chattering;
import org.loomproof.network.solve.SolveOutcome.Racing;
import org.loomproof.network.solve.SolveOutcome.Settled;

class RelayTest {
    private static final Network ONE_RELAY = network()
            .battery("b", "30", "0", 12.6, 0.01)
            .relay("k", "coil", "0", "30", "made", "rested")
            .contact("key", "30", "coil")
            .resistor("load", "made", "0", 10)
            .resistor("idle", "rested", "0", 20)
            .build();

    @Test
    void currentFlowsThrough87aAtRestAnd87WhenPulledIn() {
        Solver solver = Solver.of(ONE_RELAY);
        OperatingPoint rest = solver.solve(ONE_RELAY.atRest()).settledPoint();
        assertThat(rest.relayPosition(id("k"))).isEqualTo(RelayPosition.RELEASED);
        assertThat(rest.amps(id("idle"))).isCloseTo(12.6 / 20.012, within(1e-9));
        assertThat(rest.amps(id("load"))).isZero();

        OperatingPoint in = solver.solve(ONE_RELAY.atRest().closed(id("key"))).settledPoint();
        assertThat(in.relayPosition(id("k"))).isEqualTo(RelayPosition.PULLED_IN);
        assertThat(in.amps(id("idle"))).isZero();
        // Battery 12.6 V behind 10 mΩ, loaded by 10.002 Ω and by the coil's 85.001 Ω side by side.
        double terminal = 12.6 / (1 + 0.01 * (1 / 10.002 + 1 / 85.001));
        assertThat(in.volts(at("30"))).isCloseTo(terminal, within(1e-9));
        assertThat(in.amps(id("load"))).isCloseTo(terminal / 10.002, within(1e-9));
        assertThat(in.ampsInto(id("k"), "86")).isCloseTo(terminal / 85.001, within(1e-9));
        assertThat(in.ampsInto(id("k"), "30")).isCloseTo(terminal / 10.002, within(1e-9));
        assertThat(in.ampsInto(id("k"), "87")).isCloseTo(-terminal / 10.002, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "7.99, RELEASED, PULLED_IN",
        "8.01, PULLED_IN, PULLED_IN",
        "1.21, RELEASED, PULLED_IN",
        "1.19, RELEASED, RELEASED",
    })
    void betweenDropOutAndPullInHistoryDecides(
            double coilVolts, RelayPosition afterPowerUp, RelayPosition afterRunning) {
        Network network = network()
                .battery("b", "coil", "0", 12, 1e-6)
                .relay("k", "coil", "0", "c", "m", "r")
                .build();
        Solver solver = Solver.of(network);
        OperatingPoint running = solver.solve(network.atRest()).settledPoint();
        Setting sagged = network.atRest().emf(id("b"), coilVolts);
        assertThat(solver.solve(sagged).settledPoint().relayPosition(id("k"))).isEqualTo(afterPowerUp);
        assertThat(solver.solve(sagged, running).settledPoint().relayPosition(id("k")))
                .isEqualTo(afterRunning);
    }

    @Test
    void aCoilHasNoPolarity() {
        Network network = network()
                .battery("b", "0", "coil", 12, 0.01)
                .relay("k", "coil", "0", "c", "m", "r")
                .build();
        assertThat(Solver.of(network).solve(network.atRest()).settledPoint().relayPosition(id("k")))
                .isEqualTo(RelayPosition.PULLED_IN);
    }

    /** A relay that holds itself through its own make contact once a button has been pressed. */
    private static final Network SELF_HOLDING = network()
            .battery("b", "30", "0", 12.6, 0.01)
            .relay("k", "coil", "0", "30", "coil", "unused")
            .contact("button", "30", "coil")
            .build();

    @Test
    void aSelfHoldingRelayHasTwoStableAnswersAndBothAreTold() {
        Solver solver = Solver.of(SELF_HOLDING);
        assertThat(solver.solve(SELF_HOLDING.atRest())).isInstanceOfSatisfying(Settled.class, settled -> {
            assertThat(settled.point().relayPosition(id("k"))).isEqualTo(RelayPosition.RELEASED);
            assertThat(settled.otherStablePoints())
                    .singleElement()
                    .satisfies(other -> assertThat(other.relayPosition(id("k"))).isEqualTo(RelayPosition.PULLED_IN));
        });
        OperatingPoint pressed =
                solver.solve(SELF_HOLDING.atRest().closed(id("button"))).settledPoint();
        assertThat(solver.solve(SELF_HOLDING.atRest(), pressed).settledPoint().relayPosition(id("k")))
                .isEqualTo(RelayPosition.PULLED_IN);
    }

    @Test
    void aRelayThatCutsItsOwnCoilChatters() {
        Network buzzer = network()
                .battery("b", "30", "0", 12.6, 0.01)
                .relay("k", "coil", "0", "30", "unused", "coil")
                .build();
        assertThat(Solver.of(buzzer).solve(buzzer.atRest())).isEqualTo(new Chattering(List.of(id("k"))));
    }

    @Test
    void aRelayWhoseLoadPullsTheSupplyDownChatters() {
        // The coil needs 8 V to pull in; its own contact then loads 12 V behind 1 Ω with 0.1 Ω: 1.1 V, below drop-out.
        Network weak = network()
                .battery("b", "30", "0", 12, 1)
                .relay("k", "30", "0", "30", "load", "unused")
                .resistor("load", "load", "0", 0.1)
                .build();
        assertThat(Solver.of(weak).solve(weak.atRest())).isEqualTo(new Chattering(List.of(id("k"))));
    }

    @Test
    void twoRelaysThatCutEachOtherRace() {
        Network race = network()
                .battery("b", "30", "0", 12.6, 0.01)
                .relay("left", "left coil", "0", "30", "u1", "right coil")
                .relay("right", "right coil", "0", "30", "u2", "left coil")
                .build();
        assertThat(Solver.of(race).solve(race.atRest())).isInstanceOfSatisfying(Racing.class, racing -> {
            assertThat(racing.moving()).containsExactly(id("left"), id("right"));
            assertThat(racing.stablePoints())
                    .extracting(point -> point.relayPosition(id("left")))
                    .containsExactlyInAnyOrder(RelayPosition.PULLED_IN, RelayPosition.RELEASED);
        });
    }

    @Test
    void aHeldContactStaysWhateverTheCoilDoes() {
        Solver solver = Solver.of(ONE_RELAY);
        Setting welded = ONE_RELAY.atRest().contactHeld(id("k"), RelayPosition.PULLED_IN);
        assertThat(solver.solve(welded).settledPoint().amps(id("load"))).isGreaterThan(1.2);
        Setting stuck = ONE_RELAY.atRest().closed(id("key")).contactHeld(id("k"), RelayPosition.RELEASED);
        assertThat(solver.solve(stuck).settledPoint().amps(id("load"))).isZero();
        assertThat(solver.solve(stuck.contactFree(id("k"))).settledPoint().amps(id("load")))
                .isGreaterThan(1.2);
    }

    @Test
    void aBrokenRelayNeitherMovesNorConducts() {
        Setting broken = ONE_RELAY.atRest().closed(id("key")).broken(id("k"));
        OperatingPoint point = Solver.of(ONE_RELAY).solve(broken).settledPoint();
        assertThat(point.relayPosition(id("k"))).isEqualTo(RelayPosition.RELEASED);
        assertThat(point.amps(id("idle"))).isZero();
        assertThat(point.amps(id("load"))).isZero();
    }

    @Test
    void aHotCoilDrawsLess() {
        Setting hot = ONE_RELAY.atRest().closed(id("key")).ohms(id("k"), 106.5);
        OperatingPoint point = Solver.of(ONE_RELAY).solve(hot).settledPoint();
        assertThat(point.ampsInto(id("k"), "86")).isCloseTo(point.volts(at("coil")) / 106.5, within(1e-12));
    }

    @Test
    void bothSetsOfADoublePoleRelayMoveTogether() {
        Network network = network()
                .battery("b", "30", "0", 12.6, 0.01)
                .part(new Relay(
                        id("k"),
                        at("coil"),
                        at("0"),
                        260,
                        7.2,
                        1.2,
                        List.of(
                                Contact.changeover(at("leg1"), at("30"), at("0")),
                                Contact.changeover(at("leg2"), at("0"), at("30"))),
                        2e-3))
                .contact("key", "30", "coil")
                .resistor("motor", "leg1", "leg2", 3)
                .build();
        Solver solver = Solver.of(network);
        assertThat(solver.solve(network.atRest()).settledPoint().amps(id("motor")))
                .isLessThan(-4);
        OperatingPoint in = solver.solve(network.atRest().closed(id("key"))).settledPoint();
        assertThat(in.amps(id("motor"))).isGreaterThan(4);
        assertThat(in.ampsInto(id("k"), "87-2")).isCloseTo(-in.amps(id("motor")), within(1e-9));
    }

    @Test
    void aLongRingOfRelaysEndsInWordsWithinBoundedWork() {
        int count = 2999;
        var ring = network().battery("b", "30", "0", 12.6, 1e-4);
        for (int k = 0; k < count; k++) {
            // Each relay feeds the next one's coil through its rest contact: an odd ring has no stable pattern.
            ring.relay("k" + k, "coil" + k, "0", "30", "unused" + k, "coil" + (k + 1) % count);
        }
        Network network = ring.build();
        Solver solver = Solver.of(network);
        SolveOutcome outcome = solver.solve(network.atRest());
        assertThat(outcome).isInstanceOfAny(Chattering.class, Racing.class);
        assertThat(solver.work()).isLessThan(200_000_000);
    }
}
