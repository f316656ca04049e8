package org.loomproof.workshop.meter.shock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.meter.evidence.Bell;
import org.loomproof.workshop.meter.shock.UpAndDown.Estimate;
import org.loomproof.workshop.meter.shock.UpAndDown.Trial;
import org.loomproof.workshop.quantity.Metres;

class ShockSettingTest {

    private static final Demand STREET = new Demand(0.02, 0.5, new Wanted(20, 2, 0.95));

    private static List<Trial> trials(String levels, String responses) {
        List<Trial> trials = new ArrayList<>();
        for (int k = 0; k < levels.length(); k++) {
            trials.add(new Trial(levels.charAt(k) - '0', responses.charAt(k) == '1'));
        }
        return trials;
    }

    /** Formulas of Dixon and Mood as printed by Caliskan et al. (2021), equations 1 to 4; the series itself is made up. */
    @Test
    void aSeriesGivesMeanAndSpreadByThePublishedFormula() {
        Estimate estimate = UpAndDown.estimate(trials("32343212323454321232", "10011100100011110010"), 1.0, 0.5)
                .orElseThrow();
        assertThat(estimate.mean()).isCloseTo(2.35, within(1e-9));
        assertThat(estimate.deviation()).isCloseTo(1.62 * 0.5 * (0.76 + 0.029), within(1e-9));
        assertThat(estimate.deviation()).isCloseTo(0.63909, within(1e-5));
        assertThat(estimate.isSpreadSure()).isTrue();
    }

    /** The second branch of the same formulas; made-up data. */
    @Test
    void aSeriesThatOnlyGoesToAndFroHasTheLeastSpreadItsStepShows() {
        Estimate estimate =
                UpAndDown.estimate(trials("21212121", "10101010"), 1.0, 0.5).orElseThrow();
        assertThat(estimate.mean()).isCloseTo(1.75, within(1e-9));
        assertThat(estimate.deviation()).isCloseTo(0.265, within(1e-9));
        assertThat(estimate.isSpreadSure()).isFalse();
    }

    @Test
    void aFewBlowsSayNothing() {
        assertThat(UpAndDown.estimate(trials("2121", "1010"), 1.0, 0.5)).isEmpty();
    }

    /** Tabled: Φ(0) = 0.5, Φ(1) = 0.841345, Φ(1.96) = 0.975002, Φ(-3) = 0.001350 (handbook tables, from memory). */
    @Test
    void theNormalDistributionIsTheTabledOne() {
        assertThat(Bell.below(0, 0, 1)).isCloseTo(0.5, within(1e-6));
        assertThat(Bell.below(1, 0, 1)).isCloseTo(0.841345, within(1e-6));
        assertThat(Bell.below(1.96, 0, 1)).isCloseTo(0.975002, within(1e-6));
        assertThat(Bell.below(-3, 0, 1)).isCloseTo(0.001350, within(1e-6));
    }

    /** m g h: 0.2 kg from 0.1 m brings 0.196 J. */
    @Test
    void aBlowBringsWhatItFalls() {
        assertThat(new Knock(0.2, new Metres(0.1)).joules()).isCloseTo(0.19613, within(1e-5));
    }

    /** A sensor whose threshold is known is found again, and the more sensitive of two is refused for its false alarms. */
    @Test
    void theSettingThatBearsTheStreetAndNoticesTheBlowIsChosen() {
        List<Blow> blows = new ArrayList<>();
        blows.addAll(series(2, 0.2, 0.12, 60, 1));
        blows.addAll(series(5, 0.03, 0.12, 60, 2));
        blows.addAll(series(1, 0.6, 0.12, 60, 3));
        assertThat(ShockSetting.offTheMethod(blows)).isEmpty();
        List<ShockSetting.Judged> judged = ShockSetting.judge(blows, STREET);
        assertThat(judged).extracting(ShockSetting.Judged::setting).containsExactly(1.0, 2.0, 5.0);
        assertThat(judged.get(1).halfJoules())
                .hasValueSatisfying(j -> assertThat(j).isBetween(0.15, 0.27));
        assertThat(judged).extracting(ShockSetting.Judged::doesIt).containsExactly(false, true, false);
        assertThat(judged.get(2).falseAMonth()).isGreaterThan(2);
        assertThat(judged.get(0).noticedShare()).isLessThan(0.95);
        assertThat(ShockSetting.best(judged))
                .hasValueSatisfying(best -> assertThat(best.setting()).isEqualTo(2));
    }

    @Test
    void theNextBlowIsAStepWeakerAfterOneThatWasNoticed() {
        ShockSetting.Judged one =
                ShockSetting.judge(List.of(blow(0.2, true)), STREET).getFirst();
        assertThat(one.next().joules()).isCloseTo(0.2 * 9.80665 * 0.2 / Math.sqrt(2), within(1e-9));
        assertThat(one.doesIt()).isFalse();
    }

    /** After 0.2 m unnoticed at 0.1414 m the method goes back up to 0.2 m: 0.392 J. */
    @Test
    void aBlowThatTheMethodDidNotAskForIsNoticed() {
        List<Blow> between = List.of(blow(0.2, true), blow(0.1414, false), blow(0.17, true));
        assertThat(ShockSetting.offTheMethod(between)).containsOnlyKeys(2);
        assertThat(ShockSetting.offTheMethod(between).get(2)).isCloseTo(0.2 * 9.80665 * 0.2, within(1e-9));
        List<Blow> wrongWay = List.of(blow(0.2, true), blow(0.2828, false));
        assertThat(ShockSetting.offTheMethod(wrongWay)).containsOnlyKeys(1);
    }

    private static Blow blow(double metres, boolean noticed) {
        return new Blow(1, new Knock(0.2, new Metres(metres)), noticed);
    }

    private static List<Blow> series(double setting, double half, double spread, int count, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        double x = Math.log10(0.2);
        List<Blow> blows = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            boolean noticed = x > Math.log10(half) + spread * gauss(chance);
            blows.add(new Blow(setting, new Knock(0.2, new Metres(0.1)).bringing(Math.pow(10, x)), noticed));
            x += noticed ? -ShockSetting.STEP : ShockSetting.STEP;
        }
        return blows;
    }

    private static double gauss(SplittableRandom chance) {
        double sum = 0;
        for (int k = 0; k < 12; k++) {
            sum += chance.nextDouble();
        }
        return sum - 6;
    }
}
