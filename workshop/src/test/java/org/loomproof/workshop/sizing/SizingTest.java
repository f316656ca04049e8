package org.loomproof.workshop.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.relay.Relays;
import org.loomproof.workshop.trade.wire.Conductor;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.trade.wire.Surroundings;

/** Sizes against published tables and sums worked by hand. */
class SizingTest {

    /** Where nothing derates: 105 °C insulation by itself in air of 20 °C. */
    private static final Surroundings COOL = new Surroundings(new Celsius(105), new Celsius(20), 1);

    /** Rounding of the hand-worked sums below. */
    private static final double ROUNDED = 0.006;

    /**
     * Fuses by wire size of FAA AC 43.13-1B Change 1, table 11-3. Whatever fuse is chosen for a load behind such a wire stays at
     * or under the table's.
     */
    @ParameterizedTest
    @CsvSource({"20, 5", "18, 10", "16, 10", "14, 15", "12, 20", "10, 30"})
    void noFuseIsLargerThanThePublishedOneForItsWire(String gauge, double publishedAmps) {
        Conductor conductor = conductor(gauge + " AWG");
        for (double amps = 0.1; amps < 40; amps *= 1.3) {
            FuseChoice.rating(
                            new Amps(amps),
                            new Amps(Math.min(
                                    publishedAmps, conductor.fuseCeiling().value())))
                    .ifPresent(r -> assertThat(r.value()).isLessThanOrEqualTo(publishedAmps));
        }
        assertThat(FuseChoice.largestUnder(new Amps(publishedAmps)).value()).isEqualTo(publishedAmps);
    }

    /** 33 CFR 183.455(c)(1): a fuse may be up to 150 % of the ampacity of 33 CFR 183.425 table 5, here for 105 °C insulation. */
    @ParameterizedTest
    @CsvSource({"18, 20", "16, 25", "14, 35", "12, 45", "10, 60"})
    void theCeilingOfAWireStaysUnderTheLegalOneForBoats(String gauge, double ampacityAmps) {
        assertThat(conductor(gauge + " AWG").fuseCeiling().value()).isLessThanOrEqualTo(1.5 * ampacityAmps);
    }

    /** A fuse maker's guide (Littelfuse Fuseology): load a fuse continuously to at most 75 % of its rating. */
    @ParameterizedTest
    @CsvSource({"1.4, 2", "1.6, 3", "3.1, 5", "3.8, 7.5", "7.4, 10", "7.6, 15"})
    void aFuseIsLoadedToThreeQuartersAtMost(double load, double rating) {
        assertThat(FuseChoice.rating(new Amps(load), new Amps(30))).contains(new Amps(rating));
        assertThat(load).isLessThanOrEqualTo(0.75 * rating);
    }

    @Test
    void aWireTooThinForItsLoadGetsNoFuse() {
        assertThat(FuseChoice.rating(new Amps(8), new Amps(10))).isEmpty();
    }

    static List<Conductor> bought() {
        return java.util.stream.Stream.concat(Conductors.listMetric().stream(), Conductors.listGauges().stream())
                .filter(Conductor::bought)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("bought")
    void theFuseInFrontOfAWireDecidesWhenItAsksForMoreThanTheDrop(Conductor conductor) {
        List<Conductor> sizes = Conductors.listMetric();
        Amps fuse = Protection.ceiling(conductor.area(), COOL);
        Conductor chosen = WireChoice.choose(
                sizes, new WireChoice.Run(new Amps(0.1), true, new Metres(1), new Volts(0.5), fuse), COOL);
        assertThat(Protection.ceiling(chosen.area(), COOL).value()).isGreaterThanOrEqualTo(fuse.value());
    }

    /** 5 A over 4 m may lose 0.2 V: at most 10 mΩ/m, which 2.5 mm² (7.6 mΩ/m) keeps and 1.5 mm² (12.7 mΩ/m) does not. */
    @Test
    void aLongWireIsChosenByItsDrop() {
        Conductor chosen = WireChoice.choose(
                Conductors.listMetric(),
                new WireChoice.Run(new Amps(5), true, new Metres(4), new Volts(0.2), new Amps(7.5)),
                COOL);
        assertThat(chosen.area().value()).isEqualTo(2.5);
        assertThat(WireChoice.drop(chosen, new Amps(5), new Metres(4)).value()).isCloseTo(0.152, within(ROUNDED));
    }

    /**
     * 4 A over 3 m may lose 0.16 V: 13.3 mΩ/m. At 20 °C 1.5 mm² (12.7 mΩ/m) keeps that; in air of 60 °C it warms itself to 60 + 45
     * √(4 / 19.9) = 80 °C and has 12.7 · (1 + 0.00393 · 60) = 15.7 mΩ/m, and 2.5 mm² is taken.
     */
    @Test
    void aWarmWireLosesMore() {
        WireChoice.Run run = new WireChoice.Run(new Amps(4), true, new Metres(3), new Volts(0.16), new Amps(7.5));
        Surroundings hot = new Surroundings(new Celsius(105), new Celsius(60), 1);
        WireChoice.Run brief = new WireChoice.Run(new Amps(4), false, new Metres(3), new Volts(0.18), new Amps(7.5));
        assertThat(WireChoice.choose(Conductors.listMetric(), run, hot).area().value())
                .isEqualTo(2.5);
        // For seconds: 12.7 · (1 + 0.00393 · 40) = 14.7 mΩ/m, 0.176 V.
        assertThat(WireChoice.choose(Conductors.listMetric(), brief, hot).area().value())
                .isEqualTo(1.5);
    }

    /** 14.8 V over 85 Ω. */
    @Test
    void aCoilDrawsMostAtTheHighestSupply() {
        assertThat(CoilCurrent.most(new Ohms(85)).value()).isCloseTo(0.174, within(ROUNDED));
    }

    /** 8 V at 20 °C is 8 · (1 + 0.00393 · 65) = 10.04 V at 85 °C: reached from 11.6 V with 1.5 V lost, not with 1.6 V. */
    @Test
    void aHotCoilPullsInOnATiredBatteryOnlyWhenLittleIsLostBeforeIt() {
        assertThat(CoilCurrent.pullsInHot(new Volts(8), new Celsius(85), new Volts(1.5)))
                .isTrue();
        assertThat(CoilCurrent.pullsInHot(new Volts(8), new Celsius(85), new Volts(1.6)))
                .isFalse();
    }

    @Test
    void aRelayIsChosenForItsContactAndForWhatItsDriverCarries() {
        RelayChoice.Need starter =
                new RelayChoice.Need(new Amps(0), new Amps(25), new Amps(0.5), new Volts(0.3), new Celsius(60));
        Optional<RelayType> relay = RelayChoice.first(Relays.listRelays(), starter);
        assertThat(relay.flatMap(RelayType::breakRating).map(Amps::value))
                .hasValueSatisfying(r -> assertThat(r).isGreaterThanOrEqualTo(25));
        RelayChoice.Need weakDriver =
                new RelayChoice.Need(new Amps(1), new Amps(0), new Amps(0.1), new Volts(0.3), new Celsius(60));
        assertThat(RelayChoice.first(Relays.listRelays(), weakDriver)).isEmpty();
    }

    private static Conductor conductor(String name) {
        return Conductors.listGauges().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
