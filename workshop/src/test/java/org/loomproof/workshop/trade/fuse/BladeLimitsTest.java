package org.loomproof.workshop.trade.fuse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Seconds;

/** Times of one maker's data sheets of blade fuses, as two public engineering notes give them. */
class BladeLimitsTest {

    private static Optional<Double> longest(double rating, double least, double most) {
        return BladeLimits.longest(new Amps(rating), new Amps(least), new Amps(most))
                .map(Seconds::value);
    }

    @ParameterizedTest
    @CsvSource({
        "10, 13.5, 600",
        "10, 16, 50",
        "10, 20, 5",
        "30, 105, 0.5",
        "30, 180, 0.15",
        "40, 54, 1800",
        "40, 80, 50",
        "40, 140, 7",
        "40, 240, 1"
    })
    void atAPublishedMultipleItIsThePublishedTime(double rating, double amps, double seconds) {
        assertThat(longest(rating, amps, amps).orElseThrow()).isCloseTo(seconds, within(1e-9));
    }

    /** Under 135 % a fuse need not open at all. */
    @Test
    void aLittleTooMuchNeedNotOpenIt() {
        assertThat(longest(10, 13.4, 13.4)).isEmpty();
    }

    /** 10 A at 40 A: 350 % melts it with 0.5 s · (35 A)² = 612.5 A²s, which 40 A bring in 0.383 s. */
    @Test
    void betweenThemTheHeatOfTheLowerOneDoes() {
        assertThat(longest(10, 40, 40).orElseThrow()).isCloseTo(0.3828, within(1e-4));
    }

    /** Known only to lie between 20 and 40 A: at 20 A it may need 5 s · (20 A)² = 2000 A²s, which 40 A bring in 1.25 s. */
    @Test
    void aCurrentBetweenBoundsIsTakenForItsGreatestHeat() {
        assertThat(longest(10, 20, 40).orElseThrow()).isCloseTo(1.25, within(1e-9));
    }

    @Test
    void moreCurrentNeverTakesLonger() {
        double before = Double.POSITIVE_INFINITY;
        for (double amps = 13.5; amps < 2000; amps *= 1.01) {
            double now = longest(10, amps, amps).orElseThrow();
            assertThat(now).isLessThan(before);
            before = now;
        }
    }
}
