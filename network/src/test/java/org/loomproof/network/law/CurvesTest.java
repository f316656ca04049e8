package org.loomproof.network.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.solve.OperatingPoint;

/** The curved laws, at points worked out by hand or printed in data sheets. */
class CurvesTest {
    private static double forwardVolts(DiodeModel model, double amps) {
        ShockleyCurve curve = ShockleyCurve.of(model);
        return curve.junctionVolts(amps) + model.seriesOhms() * amps;
    }

    @Test
    void oneAmpereRectifierStaysUnderItsDataSheetDrop() {
        // 1N4001 family: at most 1.1 V at 1 A (two makers), 1.3 V at 3 A (one maker).
        assertThat(forwardVolts(DiodeModel.SILICON_1A, 1)).isBetween(0.75, 1.1);
        assertThat(forwardVolts(DiodeModel.SILICON_1A, 3)).isLessThan(1.3);
    }

    @Test
    void threeAmpereRectifierStaysUnderItsDataSheetDrop() {
        // 1N5400 family: at most 1.0 V at 3 A (four makers).
        assertThat(forwardVolts(DiodeModel.SILICON_3A, 3)).isBetween(0.7, 1.0);
    }

    @Test
    void anIndicatorDropsWhatItsColourDrops() {
        assertThat(forwardVolts(DiodeModel.LED_RED, 0.010)).isBetween(1.7, 2.1);
        assertThat(forwardVolts(DiodeModel.LED_WHITE, 0.010)).isBetween(2.9, 3.4);
    }

    @Test
    void theThermalVoltageIsThatOf27Degrees() {
        assertThat(DiodeModel.THERMAL_VOLTS).isCloseTo(0.025865, within(1e-6));
    }

    private static OperatingPoint lampAt(double volts) {
        return network()
                .battery("b", "a", "0", volts, 1e-7)
                .lamp("l", "a", "0", 13.5, 5)
                .solved();
    }

    @Test
    void aLampTakesItsRatedPowerAtItsRatedVoltage() {
        assertThat(lampAt(13.5).watts(id("l"))).isCloseTo(5, within(1e-6));
    }

    @Test
    void aDarkLampHasItsColdResistance() {
        double ohms = 1e-3 / lampAt(1e-3).amps(id("l"));
        assertThat(ohms).isCloseTo(36.45 * Lamp.TUNGSTEN_COLD_TO_HOT, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"12.0, 4.1", "6.75, 1.73"})
    void aLampBelowItsRatingFollowsTheMakersExponent(double volts, double watts) {
        // Power as volts^1.54, hand-worked: 5 (12 / 13.5)^1.54 = 4.17 and 5 (0.5)^1.54 = 1.72 W.
        assertThat(lampAt(volts).watts(id("l"))).isCloseTo(watts, within(0.08));
    }

    @Test
    void fourLampsInSeriesShareAlike() {
        OperatingPoint point = network()
                .battery("b", "n0", "0", 12.6, 0.01)
                .lamp("l0", "n0", "n1", 13.5, 5)
                .lamp("l1", "n1", "n2", 13.5, 5)
                .lamp("l2", "n2", "n3", 13.5, 5)
                .lamp("l3", "n3", "0", 13.5, 5)
                .solved();
        assertThat(point.volts(at("n1"))).isCloseTo(3 * point.volts(at("n3")), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-3, -0.1, -1e-3, 0, 1e-3, 0.1, 0.3999, 0.4001, 1, 12})
    void aChannelsSlopeIsTheSlopeOfItsCurrent(double volts) {
        ChannelCurve curve = ChannelCurve.of(new Drive(0.4, 0, 0.5));
        double step = 1e-7;
        double slope = (curve.amps(volts + step) - curve.amps(volts - step)) / (2 * step);
        assertThat(curve.slopeSiemens(volts)).isCloseTo(slope, within(2e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-14, -1, -0.1, 0, 0.05, 0.5, 3, 14})
    void aFilamentsSlopeIsTheSlopeOfItsCurrent(double volts) {
        FilamentCurve curve = FilamentCurve.of(new Lamp(id("l"), at("a"), at("b"), 13.5, 21));
        double step = 1e-6;
        double slope = (curve.amps(volts + step) - curve.amps(volts - step)) / (2 * step);
        assertThat(curve.slopeSiemens(volts, curve.chordSiemens(volts))).isCloseTo(slope, within(1e-6));
    }
}
