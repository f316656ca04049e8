package org.loomproof.workshop.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Watts;
import org.loomproof.workshop.trade.relay.ContactDuty;

/** Heat of resistors, and ratings of contacts by what they switch. */
class ResistorHeatTest {

    /** 14.8² / R. 4.7 kΩ: 46.6 mW; 1 kΩ: 0.219 W, more than half of 0.25 W; 249 Ω: 0.880 W; 100 Ω: 2.19 W. */
    @ParameterizedTest
    @CsvSource({"4700, 0.0466, 0.25", "1000, 0.219, 0.5", "249, 0.880, 2", "100, 2.19, 5"})
    void aResistorIsLoadedToHalf(double ohms, double heat, double size) {
        Watts most = ResistorHeat.most(new Ohms(ohms));
        assertThat(most.value()).isCloseTo(heat, within(0.005 * heat));
        assertThat(ResistorHeat.size(most)).contains(new Watts(size));
    }

    @Test
    void noDrawerHoldsOneForFortyWatts() {
        assertThat(ResistorHeat.size(ResistorHeat.most(new Ohms(5)))).isEmpty();
    }

    /** Omron G8JN (read): makes 120 A, rated 35 A. Ten times 12 A of lamps just fit: 12 · 2.92 = 35.04 A. */
    @Test
    void aContactForLampsIsRatedForTheirColdFilaments() {
        assertThat(ContactDuty.LAMP.rating(new Amps(12)).value()).isCloseTo(10 * 12 * 35.0 / 120, within(0.05));
        assertThat(ContactDuty.RESISTIVE.rating(new Amps(12)).value()).isEqualTo(12);
        assertThat(ContactDuty.SOLENOID.rating(new Amps(12)).value()).isEqualTo(15);
        assertThat(ContactDuty.MOTOR.rating(new Amps(4)).value()).isEqualTo(6);
    }
}
