package org.loomproof.workshop.trade.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TerminalsTest {
    @Test
    void theTerminalsOfTheTradeMeanWhatTheListSays() {
        assertThat(Terminals.find("30").orElseThrow().meaning()).contains("battery positive");
        assertThat(Terminals.find("15").orElseThrow().meaning()).contains("ignition switch");
        assertThat(Terminals.find("31").orElseThrow().meaning()).contains("ground");
        assertThat(Terminals.find("50").orElseThrow().group()).isEqualTo("starter");
        assertThat(Terminals.find("58").orElseThrow().meaning()).contains("side, tail");
    }

    @Test
    void relayContactsComeFromRelayMakersAndNotFromTheList() {
        assertThat(Terminals.find("87")).isEmpty();
        assertThat(Terminals.listCubeRelay())
                .extracting(Terminal::number)
                .containsExactly("30", "87", "87a", "85", "86");
    }
}
