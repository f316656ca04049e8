package org.loomproof.workshop.trade.diode;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;

class DiodesTest {
    @Test
    void typeNumbersBlockWhatTheirDataSheetsSay() {
        assertThat(Diodes.find("1N4001").orElseThrow().reverse()).isEqualTo(new Volts(50));
        assertThat(Diodes.find("1N4004").orElseThrow().reverse()).isEqualTo(new Volts(400));
        assertThat(Diodes.find("1N4007").orElseThrow().reverse()).isEqualTo(new Volts(1000));
        assertThat(Diodes.find("1N4002").orElseThrow().forward()).isEqualTo(new Volts(1.1));
        assertThat(Diodes.find("1N5404").orElseThrow().average()).isEqualTo(new Amps(3));
    }

    @Test
    void theSmallestThatSufficesIsFound() {
        assertThat(Diodes.findFor(new Amps(0.172), new Volts(100)).orElseThrow().name())
                .isEqualTo("1N4002");
        assertThat(Diodes.findFor(new Amps(1.5), new Volts(100)).orElseThrow().name())
                .isEqualTo("1N5401");
        assertThat(Diodes.findFor(new Amps(4), new Volts(100)).orElseThrow().name())
                .isEqualTo("6A1");
        assertThat(Diodes.findFor(new Amps(7), new Volts(100))).isEmpty();
    }
}
