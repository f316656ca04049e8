package org.loomproof.workshop.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.JointChoice.Carries;
import org.loomproof.workshop.sizing.JointChoice.Method;
import org.loomproof.workshop.trade.connector.CrimpPull;
import org.loomproof.workshop.trade.connector.InsulatedTerminal;
import org.loomproof.workshop.trade.connector.Workmanship;
import org.loomproof.workshop.trade.wire.Copper;

/** Joints by size and place. */
class JointChoiceTest {

    private static final boolean SOLDERS = true;
    private static final boolean CRIMPS = false;

    private static SquareMillimetres mm2(double value) {
        return new SquareMillimetres(value);
    }

    /** Red 22 to 18, blue 16 and 14, yellow 12 and 10 AWG: common practice, no published source. */
    @ParameterizedTest
    @CsvSource({"22, RED", "20, RED", "18, RED", "16, BLUE", "14, BLUE", "12, YELLOW", "10, YELLOW"})
    void sleevesByGauge(int gauge, InsulatedTerminal sleeve) {
        assertThat(InsulatedTerminal.find(Copper.area(gauge))).contains(sleeve);
    }

    @ParameterizedTest
    @CsvSource({"0.35, RED", "0.5, RED", "1, RED", "1.5, BLUE", "2.5, BLUE", "4, YELLOW", "6, YELLOW"})
    void sleevesByMetricSize(double size, InsulatedTerminal sleeve) {
        assertThat(InsulatedTerminal.find(mm2(size))).contains(sleeve);
    }

    @ParameterizedTest
    @CsvSource({"0.14", "10"})
    void noSleeveForWhatIsThinnerOrThickerThanAny(double size) {
        assertThat(InsulatedTerminal.find(mm2(size))).isEmpty();
    }

    /** The commonest bad joint: a lead of 0.5 mm² tapped onto a factory wire of 2.5 mm² needs a blue tap, its relay end a red terminal. */
    @Test
    void theTapGoesByTheFactoryConductorAndTheTerminalByTheLead() {
        JointChoice tap = JointChoice.onWhole(mm2(2.5), List.of(mm2(0.5)), Carries.SIGNAL, CRIMPS);
        assertThat(tap.method()).isEqualTo(Method.TAP_CONNECTOR);
        assertThat(tap.sleeve()).contains(InsulatedTerminal.BLUE);
        assertThat(JointChoice.onPart(List.of(mm2(0.5))).sleeve()).contains(InsulatedTerminal.RED);
    }

    @Test
    void aWrappedJointIsStrippedHalfAnInch() {
        JointChoice joint = JointChoice.onWhole(mm2(1.5), List.of(mm2(0.75)), Carries.SIGNAL, SOLDERS);
        assertThat(joint.method()).isEqualTo(Method.WRAP_AND_SOLDER);
        assertThat(joint.strip()).contains(new Metres(0.0127));
        assertThat(joint.pull()).isEmpty();
    }

    @Test
    void whatCarriesPowerIsNeverHungOnATapConnector() {
        JointChoice joint = JointChoice.onWhole(mm2(4), List.of(mm2(1.5)), Carries.POWER, CRIMPS);
        assertThat(joint.method()).isEqualTo(Method.CRIMP_SPLICE);
        assertThat(joint.sleeve()).contains(InsulatedTerminal.YELLOW);
        // 1.5 mm² pulls out first, and counts as the next thinner gauge: 16 AWG, 30 lbf.
        assertThat(joint.pull()).contains(new CrimpPull(133.5, 30));
    }

    @Test
    void aThickConductorIsCrimpedEvenWhereTheShopSolders() {
        assertThat(JointChoice.onEnd(mm2(4), List.of(mm2(4)), SOLDERS).method()).isEqualTo(Method.CRIMP_SPLICE);
        assertThat(JointChoice.onEnd(mm2(2.5), List.of(mm2(2.5)), SOLDERS).method())
                .isEqualTo(Method.SOLDER_SPLICE);
    }

    /** NASA-STD-8739.4 Change 6, before 19.12 (read): copper in one barrel adds up. 0.5 and 0.75 mm² make 1.25 mm²: blue, not red. */
    @Test
    void conductorsThatShareATerminalCountTogether() {
        JointChoice both = JointChoice.onPart(List.of(mm2(0.5), mm2(0.75)));
        assertThat(both.sleeve()).contains(InsulatedTerminal.BLUE);
        assertThat(both.by().value()).isEqualTo(1.25);
        // 0.5 mm² is a little thinner than 20 AWG (0.518 mm²): 22 AWG, 8 lbf.
        assertThat(both.pull()).contains(new CrimpPull(35.6, 8));
        assertThat(JointChoice.onBody(List.of(mm2(6), mm2(4))).sleeve()).isEmpty();
    }

    /** UL 486A, commercial, as printed in a connector maker's specification (read): newtons and pounds. */
    @ParameterizedTest
    @CsvSource({
        "26, 13.4, 3",
        "24, 22.3, 5",
        "22, 35.6, 8",
        "20, 57.9, 13",
        "18, 89, 20",
        "16, 133.5, 30",
        "14, 222.5, 50",
        "12, 311.5, 70",
        "10, 356, 80",
        "8, 400.5, 90",
        "6, 445, 100"
    })
    void pullByGauge(int gauge, double newtons, double pounds) {
        Optional<CrimpPull> pull = CrimpPull.find(Copper.area(gauge));
        assertThat(pull).contains(new CrimpPull(newtons, pounds));
        // A pound-force is 4.448 N; the maker rounds.
        assertThat(newtons / pounds).isBetween(4.44, 4.48);
    }

    /** NASA-STD-8739.4 Change 6, 10.1 (read). */
    @Test
    void insulationKeepsItsDistanceFromTheBarrel() {
        assertThat(Workmanship.leastGap()).isEqualTo(new Metres(0.00025));
        assertThat(Workmanship.mostGap(Copper.area(20))).isEqualTo(new Metres(0.00075));
        assertThat(Workmanship.mostGap(Copper.area(18))).isEqualTo(new Metres(0.00125));
    }
}
