package org.loomproof.network.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import org.junit.jupiter.api.Test;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.DiodeModel;

/** An ohmmeter on a dead network. */
class ProbeTest {
    private static final Network NETWORK = network()
            .battery("b", "plus", "0", 12, 0.01)
            .contact("door", "trigger", "0")
            .resistor("ladder", "plus", "trigger", 470)
            .resistor("load", "plus", "0", 47)
            .diode("d", "trigger", "behind", DiodeModel.SILICON_1A)
            .resistor("far", "behind", "0", 100)
            .build();

    @Test
    void readsResistorsWithTheBatteryOut() {
        assertThat(new Probe(NETWORK, at("plus"), at("0"))
                        .ohms(NETWORK.atRest())
                        .orElseThrow())
                .isCloseTo(47, within(0.05));
        assertThat(new Probe(NETWORK, at("trigger"), at("0"))
                        .ohms(NETWORK.atRest())
                        .orElseThrow())
                .isCloseTo(517.0, within(5.0));
    }

    @Test
    void aClosedDoorSwitchBeeps() {
        Probe probe = new Probe(NETWORK, at("trigger"), at("0"));
        assertThat(probe.hasContinuity(NETWORK.atRest())).isFalse();
        assertThat(probe.hasContinuity(NETWORK.atRest().closed(id("door")))).isTrue();
    }

    @Test
    void anOpenLineShowsNoReading() {
        Network open = network()
                .battery("b", "plus", "0", 12, 0.01)
                .contact("s", "plus", "out")
                .build();
        assertThat(new Probe(open, at("out"), at("0")).ohms(open.atRest())).isEmpty();
    }
}
