package org.loomproof.workshop.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures as a technician writes them. */
class FiguresTest {

    @ParameterizedTest
    @CsvSource({
        "0.148, A, 148 mA",
        "0.0499, V, 49.9 mV",
        "4700, Ω, 4.7 kΩ",
        "0.0054, s, 5.4 ms",
        "-0.015, s, -15 ms",
        "0.1, s, 0.1 s",
        "0, s, 0 s",
        "18.9, %, 18.9 %"
    })
    void theUnitFitsTheFigure(double value, String symbol, String written) {
        assertThat(Figures.withUnit(value, symbol)).isEqualTo(written);
    }
}
