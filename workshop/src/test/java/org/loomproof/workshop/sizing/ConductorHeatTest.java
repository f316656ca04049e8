package org.loomproof.workshop.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.wire.Conductor;
import org.loomproof.workshop.trade.wire.ConductorHeat;
import org.loomproof.workshop.trade.wire.Copper;
import org.loomproof.workshop.trade.wire.Insulation;
import org.loomproof.workshop.trade.wire.Surroundings;

/** What conductors bear, against FAA AC 43.13-1B and 33 CFR 183.425. */
class ConductorHeatTest {

    private static final double FOOT = 0.3048;

    private static Surroundings air(double insulation, double ambient, int loaded) {
        return new Surroundings(new Celsius(insulation), new Celsius(ambient), loaded);
    }

    /** 33 CFR 183.425, table 5 (read), and what its note 1 leaves of 105 °C insulation in an engine space of 50 °C (read in a copy). */
    @ParameterizedTest
    @CsvSource({"18, 20, 17", "16, 25, 21", "14, 35, 30", "12, 45, 38", "10, 60, 51", "8, 80, 68"})
    void inAnEngineSpaceLessIsLeft(int gauge, double freeAir, double engineSpace) {
        SquareMillimetres size = Copper.area(gauge);
        assertThat(ConductorHeat.mayCarry(size, air(105, 30, 1)).value()).isCloseTo(freeAir, within(1e-9));
        assertThat(ConductorHeat.mayCarry(size, air(105, 50, 1)).value()).isCloseTo(engineSpace, within(0.6));
    }

    /**
     * FAA table 11-9 (read): 105 °C wire, 70 °C ambient, 33 wires or more of which a fifth is loaded (7), at 60 000 ft. What thin
     * air leaves there is 0.79 (from memory). The two published tables meet within 5 % by way of our derating.
     */
    @ParameterizedTest
    @CsvSource({"18, 6", "16, 7", "14, 10", "12, 13", "10, 17"})
    void twoPublishedTablesMeet(int gauge, double bundled) {
        double thinAir = 0.79;
        double ours = thinAir
                * ConductorHeat.mayCarry(Copper.area(gauge), air(105, 70, 7)).value();
        assertThat(ours).isCloseTo(bundled, within(0.05 * bundled));
    }

    /** FAA section 5, example 2 (read): 47 A in free air, 0.91 at 20 000 ft, 8 wires of which 60 % are loaded. */
    @Test
    void theBundleOfTheExampleLeavesSixTenths() {
        assertThat(47 * 0.91 * Insulation.bundleFactor(8 * 0.6)).isCloseTo(25.66, within(0.005));
        assertThat(Insulation.bundleFactor(1)).isEqualTo(1);
    }

    /** The same example: 20 A of 26 A, 200 °C wire in 50 °C air, run of 15.5 ft. 50 + 150 √(20/26) = 181.56 °C; 9.48 ft. */
    @Test
    void aWarmConductorIsTakenAsALongerOne() {
        Celsius warm = ConductorHeat.estimate(new Celsius(50), new Celsius(200), new Amps(20), new Amps(26));
        assertThat(warm.value()).isCloseTo(181.56, within(0.005));
        Conductor any = new Conductor("of the example", new SquareMillimetres(2), 0.01, new Amps(20), true);
        double asAllowed =
                WireChoice.drop(any, new Amps(20), new Metres(15.5 * FOOT)).value();
        // L2 = 254.5 L1 / (234.5 + T2): 9.48 ft of warm wire lose what 15.5 ft lose at 20 °C.
        assertThat(WireChoice.drop(any, new Amps(20), new Metres(9.48 * FOOT), warm)
                        .value())
                .isCloseTo(asAllowed, within(0.001 * asAllowed));
    }

    /**
     * FAA tables 11-7 and 11-8 (read): ohms a foot, feet, amps, volts. The circular prints .366 V for the sixth, which its own
     * figures do not give (.00126 · 19.5 · 20 = .491), and rounds the third up to 3.60.
     */
    @ParameterizedTest
    @CsvSource({
        "0.00044, 107, 20, 0.9416",
        "0.00028, 90, 20, 0.504",
        "0.00202, 88, 20, 3.5552",
        "0.00306, 100, 20, 6.12",
        "0.00126, 39, 20, 0.9828",
        "0.00126, 19.5, 20, 0.4914",
        "0.00126, 156, 20, 3.9312",
        "0.00126, 273, 20, 6.8796"
    })
    void dropsOfThePublishedExamples(double ohmsPerFoot, double feet, double amps, double volts) {
        Conductor conductor =
                new Conductor("of the example", new SquareMillimetres(1), ohmsPerFoot / FOOT, new Amps(50), true);
        assertThat(WireChoice.drop(conductor, new Amps(amps), new Metres(feet * FOOT))
                        .value())
                .isCloseTo(volts, within(1e-4));
    }

    /** FAA table 11-9 (read), ohms per 1000 ft and square millimetres: tinned strands resist 1 to 1.2 times pure copper. */
    @ParameterizedTest
    @CsvSource({
        "16.2, 0.3826",
        "9.88, 0.6162",
        "6.23, 0.9627",
        "4.81, 1.2293",
        "3.06, 1.9412",
        "2.02, 2.9764",
        "1.26, 4.7397"
    })
    void tinnedStrandsResistALittleMoreThanCopper(double ohmsPerThousandFeet, double area) {
        double ohmsPerMetre = ohmsPerThousandFeet / 1000 / FOOT;
        assertThat(ohmsPerMetre / Copper.ohmsPerMetre(new SquareMillimetres(area)))
                .isBetween(1.0, 1.2);
    }

    /**
     * 18 AWG: 0.82305 mm², 20 A at 105 °C in 30 °C. ρ at 105 °C is 17.2414e-6 · (1 + 0.00393 · 85) = 23.00e-6 Ωmm; 400 · 23.00e-6 /
     * (0.67741 · 0.00345) = 3.937 K/s at first; 75 K / 3.937 K/s = 19.05 s, after which 63.2 % of 75 K are reached: 77.4 °C.
     */
    @Test
    void aConductorWarmsUpByItsTimeConstant() {
        SquareMillimetres size = Copper.area(18);
        Surroundings cool = air(105, 30, 1);
        assertThat(ConductorHeat.after(size, cool, new Celsius(30), new Amps(20), new Seconds(19.05))
                        .value())
                .isCloseTo(77.4, within(0.1));
        assertThat(ConductorHeat.after(size, cool, new Celsius(30), new Amps(20), new Seconds(3600))
                        .value())
                .isCloseTo(105, within(1e-6));
        assertThat(ConductorHeat.after(size, cool, new Celsius(105), new Amps(0), new Seconds(3600))
                        .value())
                .isCloseTo(30, within(1e-6));
    }

    /** IEC 60949's constant for copper, 226 A√s/mm² with 234.5 K (from memory), follows from its heat and its resistivity. */
    @Test
    void heatOfCopperGivesTheConstantOfTheShortCircuitStandard() {
        double constant = Math.sqrt(Insulation.heatPerVolume() * 254.5 / Copper.resistivity());
        assertThat(constant).isCloseTo(226, within(0.5));
    }

    @Test
    void whereTheAirIsAsHotAsTheInsulationBearsNothingMayFlow() {
        assertThat(ConductorHeat.mayCarry(Copper.area(10), air(105, 105, 1)).value())
                .isZero();
    }

    /** 0.75 mm² of at most 26 mΩ/m holds 0.663 mm² of copper: between 20 and 18 AWG, 13.3 · (20/13.3)^(ln(0.663/0.5176)/ln(0.82305/0.5176)) = 16.5 A. */
    @Test
    void aMetricSizeLiesBetweenGaugesByItsCopper() {
        assertThat(ConductorHeat.mayCarry(new SquareMillimetres(0.75), air(105, 30, 1))
                        .value())
                .isCloseTo(16.5, within(0.05));
    }
}
