package org.loomproof.workshop.trade.relay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.quantity.Amps;

class RelaysTest {
    @Test
    void theUsualRelayDrawsOneHundredFortyEightMilliampsAtRest() {
        assertThat(12.6 / Relays.usual().coil().value()).isCloseTo(0.148, within(0.0005));
    }

    @Test
    void theBreakContactIsAlwaysTheWeaker() {
        assertThat(Relays.listRelays())
                .filteredOn(RelayType::isChangeover)
                .isNotEmpty()
                .allSatisfy(type -> assertThat(type.breakRating().orElseThrow().value())
                        .isLessThan(type.makeRating().value()));
    }

    @Test
    void everyRelayPullsInWithinTheDataSheetsAndLetsGoWellBelow() {
        assertThat(Relays.listRelays()).allSatisfy(type -> {
            assertThat(type.pullIn().value()).isBetween(7.0, 8.0);
            assertThat(type.dropOut().value()).isBetween(0.5, 1.2);
            assertThat(type.coil().value()).isBetween(75.0, 100.0);
        });
    }

    @Test
    void aStarterSolenoidOfTwentyNineAmpsAsksForMoreThanTheUsualRelay() {
        assertThat(Relays.findForBreak(new Amps(29)).orElseThrow().name()).isEqualTo("cube-40");
        assertThat(Relays.findForBreak(new Amps(46))).isEmpty();
    }

    @Test
    void aCoilWithItsBuiltInResistorShowsBothInParallelAsOneMakerPrints() {
        double coil = Relays.find("cube-35").orElseThrow().coil().value();
        assertThat(coil * 680 / (coil + 680)).isCloseTo(68, within(0.5));
    }
}
