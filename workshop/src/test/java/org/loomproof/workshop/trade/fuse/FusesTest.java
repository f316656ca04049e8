package org.loomproof.workshop.trade.fuse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Range;

class FusesTest {
    @Test
    void aFuseCarriesAtMostThreeQuartersOfItsRatingForLong() {
        assertThat(Fuses.findFor(new Amps(7.5)).orElseThrow().rating()).isEqualTo(new Amps(10));
        assertThat(Fuses.findFor(new Amps(7.51)).orElseThrow().rating()).isEqualTo(new Amps(15));
        assertThat(Fuses.findFor(new Amps(2.93)).orElseThrow().rating()).isEqualTo(new Amps(4));
        assertThat(Fuses.findFor(new Amps(31))).isEmpty();
    }

    @Test
    void aRememberedResistanceIsKeptAsItStands() {
        assertThat(Fuses.coldResistance(new Amps(10)).value()).isEqualTo(0.0077);
    }

    @Test
    void aRatingWithoutFigureLiesBetweenItsNeighbours() {
        assertThat(Fuses.coldResistance(new Amps(4)).value()).isBetween(0.01785, 0.0311);
        assertThat(Fuses.coldResistance(new Amps(0.5)).value()).isGreaterThan(0.123);
        assertThat(Fuses.coldResistance(new Amps(40)).value()).isBetween(0.001, 0.00197);
    }

    @Test
    void aFusePassesThroughTheKeptPointsOfItsLine() {
        assertThat(Fuses.coldResistance(new Amps(29.999)).value()).isCloseTo(0.00197, within(1e-6));
    }

    @Test
    void theLargerTheFuseTheLessItResistsAndTheLessItDropsAtItsRating() {
        List<BladeFuse> fuses = Fuses.listBlades();
        assertThat(fuses).hasSize(12);
        for (int i = 1; i < fuses.size(); i++) {
            BladeFuse small = fuses.get(i - 1);
            BladeFuse large = fuses.get(i);
            assertThat(large.coldResistance().value())
                    .isLessThan(small.coldResistance().value());
            assertThat(large.coldResistance().value() * large.rating().value())
                    .isLessThan(small.coldResistance().value() * small.rating().value());
        }
    }

    @Test
    void aFuseInItsHolderLiesAroundItsColdResistance() {
        Range<Ohms> ten = Fuses.inHolder(new Range<>(new Amps(10), new Amps(10), new Amps(10)));
        assertThat(ten.low().value()).isCloseTo(0.7 * 0.0077 + 0.001, within(1e-9));
        assertThat(ten.typical().value()).isCloseTo(0.0077 + 0.003, within(1e-9));
        assertThat(ten.high().value()).isCloseTo(1.5 * 0.0077 + 0.010, within(1e-9));
    }

    @Test
    void aRangeOfRatingsSpansFromTheLargestFuseToTheSmallest() {
        Range<Ohms> some = Fuses.inHolder(new Range<>(new Amps(5), new Amps(10), new Amps(30)));
        assertThat(some.low().value()).isLessThan(0.003);
        assertThat(some.high().value()).isGreaterThan(0.026);
    }
}
