package org.loomproof.workshop.trade.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** Conductor figures against what is printed outside the project; the sources stand in docs/sources.md. */
class ConductorsTest {
    private static final double MILLIMETRES_PER_INCH = 25.4;

    /** The printed table has four digits. */
    private static final double PRINTED_DIGITS = 0.0006;

    /** Trade may not know the engine, so each states the figures; they must be the same. */
    @Test
    void copperIsTheEnginesCopper() {
        for (double celsius : new double[] {-40, 20, 90, 105}) {
            assertThat(Copper.temperatureFactor(new Celsius(celsius)))
                    .isCloseTo(org.loomproof.network.part.Copper.temperatureFactor(celsius), within(1e-12));
        }
        assertThat(Copper.ohmsPerMetre(new SquareMillimetres(2.5)))
                .isCloseTo(org.loomproof.network.part.Copper.ohms(1, 2.5, 20), within(1e-9));
    }

    @Test
    void theGaugeLawGivesThePrintedDiametersAndAreas() {
        List<Row> printed =
                Table.read(ConductorsTest.class, "published-gauges.csv").listRows();
        assertThat(printed).hasSize(24);
        for (Row row : printed) {
            double areaInSquareInches =
                    Copper.area((int) row.number("awg")).value() / Math.pow(MILLIMETRES_PER_INCH, 2);
            assertThat(areaInSquareInches / row.number("area_sq_in"))
                    .as("gauge " + row.text("awg"))
                    .isCloseTo(1, within(PRINTED_DIGITS));
            double diameterInInches = Math.sqrt(areaInSquareInches * 4 / Math.PI);
            assertThat(diameterInInches / row.number("diameter_in"))
                    .as("gauge " + row.text("awg"))
                    .isCloseTo(1, within(PRINTED_DIGITS));
        }
    }

    @Test
    void aMetreOfOneSquareMillimetreIsOneFiftyEighthOfAnOhm() {
        assertThat(Copper.ohmsPerMetre(new SquareMillimetres(1))).isCloseTo(1.0 / 58, within(1e-9));
    }

    @Test
    void copperResistsTwentyEightPercentMoreAtNinetyDegrees() {
        assertThat(Copper.temperatureFactor(new Celsius(90))).isCloseTo(1.28, within(0.006));
        assertThat(Copper.temperatureFactor(new Celsius(20))).isEqualTo(1);
    }

    @Test
    void roadVehicleLimitsLieBetweenPureCopperAndTheFlexibleCableLimits() {
        for (Row row : Table.read(Conductors.class, "metric.csv").listRows()) {
            SquareMillimetres nominal = new SquareMillimetres(row.number("nominal_mm2"));
            double limit = row.number("iso6722_mohm_per_m") / 1000;
            assertThat(limit).isGreaterThan(Copper.ohmsPerMetre(nominal));
            assertThat(limit).isLessThan(row.number("iec60228_class5_mohm_per_m") / 1000);
        }
    }

    @Test
    void theLeastShareOfCopperIsWhatTheLimitsImply() {
        double least = Conductors.listMetric().stream()
                .mapToDouble(
                        c -> Conductors.leastCopper(c.area()).value() / c.area().value())
                .min()
                .orElseThrow();
        assertThat(Copper.value("strand-share")).isLessThanOrEqualTo(least).isCloseTo(least, within(0.01));
    }

    /** IEC 60228 class 5: 0.75 mm² at most 26 mΩ/m, 17.2414 / 26 = 0.663 mm²; 18 AWG by the gauge law 0.823 mm². */
    @Test
    void theCopperInAWireIsWhatTheLimitThatWasReadLeaves() {
        assertThat(Conductors.leastCopper(new SquareMillimetres(0.75)).value()).isCloseTo(0.663, within(0.001));
        assertThat(Conductors.leastCopper(Copper.area(18)).value()).isCloseTo(0.823, within(0.001));
        assertThat(Conductors.leastCopper(new SquareMillimetres(2)).value()).isCloseTo(1.72, within(1e-9));
    }

    @Test
    void aSizeBetweenTwoListedOnesResistsBetweenThem() {
        double between = Conductors.ohmsPerMetre(new SquareMillimetres(2));
        assertThat(between).isBetween(0.0076, 0.0127);
    }

    @Test
    void aGaugeIsTakenAsItsSolidCopperEvenWhenShopsDoNotKeepIt() {
        // 15 AWG: 1.65023 mm², 10.4478 mΩ/m by the gauge law and 1/58.
        assertThat(Conductors.ohmsPerMetre(Copper.area(15))).isCloseTo(0.0104478, Percentage.withPercentage(0.01));
    }

    @Test
    void everyListIsThinnestFirstAndFusedNoLowerThanTheSizeBefore() {
        for (List<Conductor> sizes : List.of(Conductors.listMetric(), Conductors.listGauges())) {
            for (int i = 1; i < sizes.size(); i++) {
                assertThat(sizes.get(i).area().value())
                        .isGreaterThan(sizes.get(i - 1).area().value());
                assertThat(sizes.get(i).ohmsPerMetre())
                        .isLessThan(sizes.get(i - 1).ohmsPerMetre());
                assertThat(sizes.get(i).fuseCeiling().value())
                        .isGreaterThan(sizes.get(i - 1).fuseCeiling().value());
            }
        }
    }

    @Test
    void aGaugeMayBeFusedNoHigherThanTheMetricSizeThatHoldsAsMuchCopper() {
        for (Conductor gauge : Conductors.listGauges()) {
            Conductors.listMetric().stream()
                    .filter(metric -> metric.ohmsPerMetre() <= gauge.ohmsPerMetre())
                    .findFirst()
                    .ifPresent(metric -> assertThat(gauge.fuseCeiling().value())
                            .as(gauge.name() + " against " + metric.name())
                            .isLessThanOrEqualTo(metric.fuseCeiling().value()));
        }
    }

    @Test
    void theStarterCutMayDropLessThanALamp() {
        assertThat(AllowedDrop.STARTER_CUT.volts().value())
                .isLessThan(AllowedDrop.LAMP.volts().value());
    }
}
