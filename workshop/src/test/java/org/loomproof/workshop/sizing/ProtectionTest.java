package org.loomproof.workshop.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.fuse.OpeningTimes;
import org.loomproof.workshop.trade.wire.Copper;
import org.loomproof.workshop.trade.wire.Surroundings;

/** A fuse opens before its wire's insulation is spoilt. */
class ProtectionTest {

    private static Surroundings at(double ambient) {
        return new Surroundings(new Celsius(105), new Celsius(ambient), 5);
    }

    /**
     * At 60 °C a conductor bears √(45/75) = 0.775 of its free-air current. 16 AWG: 25 · 0.775 = 19.4 A, over 1.35 are 14.3 A, so
     * not the trade's 15 A but 10 A; 12 AWG: 45 · 0.775 / 1.35 = 25.8 A; 10 AWG: 60 · 0.775 / 1.35 = 34.4 A. 18 and 14 AWG: 11.5
     * and 20.1 A by that; the overload of two minutes leaves 14 AWG √(95/45) / 2 of 27.1 A, 19.7 A, and so 15 A.
     */
    @ParameterizedTest
    @CsvSource({"18, 10", "16, 10", "14, 15", "12, 25", "10, 30"})
    void inAHotCabinFusesAreSmaller(int gauge, double amps) {
        assertThat(Protection.ceiling(Copper.area(gauge), at(60)).value()).isEqualTo(amps);
    }

    /** FAA AC 43.13-1B table 11-3 (read), the larger of breaker and fuse: never above it, whatever the air. */
    @ParameterizedTest
    @CsvSource({"20, 7.5", "18, 10", "16, 15", "14, 20", "12, 30", "10, 40"})
    void neverAboveThePublishedProtectorOfTheSize(int gauge, double published) {
        for (double ambient = -20; ambient <= 100; ambient += 10) {
            assertThat(Protection.ceiling(Copper.area(gauge), at(ambient)).value())
                    .isLessThanOrEqualTo(published);
        }
    }

    @Test
    void theHotterTheAirTheSmallerTheFuseAndNoneInTheEnd() {
        SquareMillimetres size = new SquareMillimetres(1.5);
        double last = Double.MAX_VALUE;
        for (double ambient = 20; ambient <= 110; ambient += 5) {
            double now = Protection.ceiling(size, at(ambient)).value();
            assertThat(now).isLessThanOrEqualTo(last);
            last = now;
        }
        assertThat(last).isZero();
    }

    /** 10 A fuse, 5 m of 1 mm²: 11.6 V over 0.1 + 0.0077 + 5 · 0.0185 = 0.2002 Ω. */
    @Test
    void aShortAtTheFarEndDrawsLeast() {
        SquareMillimetres size = new SquareMillimetres(1);
        assertThat(Protection.farShort(new Amps(10), size, new Metres(5)).value())
                .isCloseTo(57.9, within(0.05));
        assertThat(Protection.opensOnAnyShort(new Amps(10), size, new Metres(5)))
                .isTrue();
    }

    /** Twice 10 A need 11.6 / 20 = 0.58 Ω or less: 0.58 - 0.1077 = 0.4723 Ω, 25.5 m of 1 mm². */
    @Test
    void alongTooLongARunAShortMayNotOpenTheFuse() {
        SquareMillimetres size = new SquareMillimetres(1);
        assertThat(Protection.longestRun(new Amps(10), size).value()).isCloseTo(25.5, within(0.05));
        assertThat(Protection.opensOnAnyShort(new Amps(10), size, new Metres(25.4)))
                .isTrue();
        assertThat(Protection.opensOnAnyShort(new Amps(10), size, new Metres(25.7)))
                .isFalse();
    }

    /** UL 248-14 as a fuse maker's guide gives it (read): 135 % within an hour, 200 % within two minutes. */
    @Test
    void publishedOpeningTimes() {
        assertThat(OpeningTimes.longest(1.35).value()).isEqualTo(3600);
        assertThat(OpeningTimes.longest(1.99).value()).isEqualTo(3600);
        assertThat(OpeningTimes.longest(2).value()).isEqualTo(120);
        assertThatThrownBy(() -> OpeningTimes.longest(1.3)).isInstanceOf(IllegalArgumentException.class);
    }
}
