package org.loomproof.workshop.trade.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;

/** How long a parked car can be started, against published figures. */
class StandbyDrainTest {

    /** Of a car maker's dealer bulletin: 40 % of 60 Ah, by current in mA, in days. 24 Ah over 25 mA is 960 h. */
    @ParameterizedTest
    @CsvSource({"60, 25, 40", "60, 50, 20", "60, 20, 50", "54, 50, 18"})
    void daysUntilTheEngineNoLongerCranks(double ampHours, double milliamps, double days) {
        assertThat(StandbyDrain.days(
                        new AmpHours(ampHours),
                        StandbyDrain.usableShare(2, new Celsius(25)),
                        new Amps(milliamps / 1000)))
                .isCloseTo(days, within(1e-6));
    }

    /** US Army TM 5-4210-230-14&P-1, table 3 (read). */
    @ParameterizedTest
    @CsvSource({"26.7, 1", "0, 0.65", "-17.8, 0.4", "-28.8, 0.2", "-40, 0.2", "40, 1"})
    void crankingPowerInTheCold(double celsius, double share) {
        assertThat(ParkedBattery.crankingPower(new Celsius(celsius))).isCloseTo(share, within(1e-9));
    }

    /**
     * At -10 °C a full battery has 0.65 - 0.25 · 10 / 17.8 = 0.5096 of its power; 0.40 crank the engine; 1 - 0.40 / 0.5096 = 0.215
     * may be taken, of an old one 3/4 of that. At +20 °C 0.912 are there, 0.561 could be taken and 0.40 are.
     */
    @Test
    void inTheColdLessMayBeTaken() {
        assertThat(StandbyDrain.usableShare(2, new Celsius(-10))).isCloseTo(0.215, within(0.0005));
        assertThat(StandbyDrain.usableShare(6, new Celsius(-10))).isCloseTo(0.161, within(0.0005));
        assertThat(StandbyDrain.usableShare(2, new Celsius(20))).isCloseTo(0.40, within(1e-9));
        assertThat(StandbyDrain.usableShare(6, new Celsius(20))).isCloseTo(0.30, within(1e-9));
        assertThat(StandbyDrain.usableShare(2, new Celsius(-25))).isZero();
    }

    /** 70 Ah, 30 mA: 0.215 · 70 / 0.030 / 24 = 20.9 days at -10 °C. */
    @Test
    void daysInTheCold() {
        double share = StandbyDrain.usableShare(2, new Celsius(-10));
        assertThat(StandbyDrain.days(new AmpHours(70), share, new Amps(0.030))).isCloseTo(20.9, within(0.05));
    }

    @Test
    void withoutAnyDrainThereIsNoEnd() {
        assertThat(StandbyDrain.days(new AmpHours(70), 0.4, new Amps(0))).isInfinite();
    }

    /** Printed worked examples: 120 Ah at 20 h, k 1.4, 120 A; 100 Ah, k 1.4, 10 A ("about 7.5 h"); and the rated current itself. */
    @ParameterizedTest
    @CsvSource({"120, 20, 1.4, 120, 0.3017", "100, 20, 1.4, 10, 7.5786", "100, 20, 1.2, 5, 20"})
    void hoursByPeukert(double ampHours, double rated, double exponent, double amps, double hours) {
        assertThat(Peukert.hours(new AmpHours(ampHours), rated, exponent, new Amps(amps)))
                .isCloseTo(hours, within(0.0001));
    }

    /** A printed example of the other form, t = C / I^k: 100 Ah, 5 A, k 1.2 gives 14.5 h; ours gives 20 h at that current. */
    @Test
    void theOtherFormOfThatLawIsNotThisOne() {
        assertThat(100 / Math.pow(5, 1.2)).isCloseTo(14.4956, within(0.0001));
        assertThat(Peukert.hours(new AmpHours(100), 20, 1.2, new Amps(5))).isCloseTo(20, within(1e-9));
    }

    /** Lamps left on, 6 A of a 60 Ah battery: 20 · (60 / 120)^1.25 = 8.41 h and not 10 h; 40 % of that are 0.140 days. */
    @Test
    void aLargeCurrentEmptiesABatterySooner() {
        assertThat(StandbyDrain.days(new AmpHours(60), 0.4, new Amps(6))).isCloseTo(0.140, within(0.0005));
    }
}
