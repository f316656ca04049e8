package org.loomproof.network.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.network.part.TimeCurrentBand.Edge;
import org.loomproof.network.part.TimeCurrentBand.Point;

/** Curves of parts against the tables they come from. */
class PublishedCurvesTest {
    private static final StorageBattery BATTERY = new StorageBattery(600);

    /** US Army TM 5-3805-262-20, READ; at the 26.7 °C of the same army's density table. */
    @Test
    void openCircuitVoltsFollowTheChargeTable() {
        double[] volts = {11.7, 12.0, 12.2, 12.4, 12.6};
        for (int quarter = 0; quarter <= 4; quarter++) {
            assertThat(BATTERY.openCircuitVolts(quarter / 4.0, 26.7)).isCloseTo(volts[quarter], within(1e-12));
        }
        assertThat(BATTERY.openCircuitVolts(0.625, 26.7)).isCloseTo(12.3, within(1e-12));
    }

    /** US Army TM 5-4210-230-14&amp;P-1, density at 26.7 °C, READ; cell volts = density + 0.84, COMPUTED: within 0.06 V. */
    @Test
    void openCircuitVoltsAreInStepWithTheDensityTable() {
        double[] density = {1.12, 1.155, 1.19, 1.225, 1.265};
        for (int quarter = 0; quarter <= 4; quarter++) {
            assertThat(BATTERY.openCircuitVolts(quarter / 4.0, 26.7))
                    .isCloseTo(6 * (density[quarter] + 0.84), within(0.065));
        }
    }

    /** CCA by SAE: 7.2 V left at -18 °C, READ. */
    @Test
    void atItsColdRatingItStandsAtTheRatingsEndVolts() {
        assertThat(BATTERY.openCircuitVolts(1, -18) - 600 * BATTERY.innerOhms(-18))
                .isCloseTo(7.2, within(1e-9));
    }

    /** Cranking power by temperature, US Army TM 5-4210-230-14&amp;P-1 table 3, READ: 100, 65, 40, 20 %. */
    @Test
    void innerResistanceGrowsAsCrankingPowerFalls() {
        double warm = BATTERY.innerOhms(26.7);
        assertThat(warm / BATTERY.innerOhms(0)).isCloseTo(0.65, within(1e-9));
        assertThat(warm / BATTERY.innerOhms(-17.8)).isCloseTo(0.40, within(1e-9));
        assertThat(warm / BATTERY.innerOhms(-28.8)).isCloseTo(0.20, within(1e-9));
    }

    /** IEC 60028: 0.017241 Ω mm²/m at 20 °C, READ; 0.00393 a kelvin, IACS, READ; at 90 °C 1.2751 times, COMPUTED. */
    @Test
    void copperResistsAsPublished() {
        assertThat(Copper.ohms(1, 1, 20)).isCloseTo(0.017241, within(5e-7));
        assertThat(Copper.temperatureFactor(90)).isCloseTo(1.2751, within(5e-5));
        assertThat(Wire.copper(id("w"), at("a"), at("b"), 10, 2.5, 20).ohms()).isCloseTo(0.068966, within(5e-7));
        assertThatIllegalArgumentException().isThrownBy(() -> Copper.temperatureFactor(-300));
    }

    @Test
    void aHotCoilNeedsMoreVoltsForTheSameCurrent() {
        Relay cold = new Relay(id("k"), at("a"), at("b"), 85, 7, 1.2, List.of(), 2e-3).timed(0.25, 5e-3, 3e-3);
        Relay hot = cold.atCelsius(90);
        assertThat(hot.coilOhms()).isCloseTo(85 * 1.2751, within(85 * 5e-5));
        assertThat(hot.pullInVolts() / hot.coilOhms()).isCloseTo(7.0 / 85, within(1e-12));
        assertThat(hot.dropOutVolts() / hot.coilOhms()).isCloseTo(1.2 / 85, within(1e-12));
        assertThat(hot.coilHenries()).isEqualTo(0.25);
    }

    /** An invented band; the law between and beyond its points is what is held. */
    @Test
    void aFuseBandIsMetAtItsPointsAndFallsAsTheSquareBeyond() {
        TimeCurrentBand band =
                new TimeCurrentBand(List.of(new Point(1.35, 2, 800), new Point(2, 0.2, 6), new Point(6, 0.02, 0.2)));
        assertThat(band.seconds(1.3, Edge.LATEST)).isInfinite();
        assertThat(band.seconds(1.35, Edge.LATEST)).isEqualTo(800);
        assertThat(band.seconds(2, Edge.EARLIEST)).isEqualTo(0.2);
        assertThat(band.seconds(12, Edge.EARLIEST)).isCloseTo(0.005, within(1e-12));
        assertThat(band.seconds(Math.sqrt(12), Edge.LATEST)).isCloseTo(Math.sqrt(6 * 0.2), within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TimeCurrentBand(List.of(new Point(2, 1, 2), new Point(3, 1.5, 3))))
                .withMessageContaining("times must not");
    }
}
