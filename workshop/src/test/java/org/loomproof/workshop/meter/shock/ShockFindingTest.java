package org.loomproof.workshop.meter.shock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Note;
import org.loomproof.workshop.meter.shock.ShockFinding.Advice;
import org.loomproof.workshop.quantity.Metres;

/** A made-up sensor, whose threshold falls by half from one setting to the next and scatters, is set by following the advice. */
class ShockFindingTest {

    private static final Knock HARMLESS = new Knock(0.2, new Metres(0.01));
    private static final Knock MATTERS = new Knock(0.2, new Metres(0.15));
    private static final Wanted WANTED = new Wanted(20, 2, 0.95);
    private static final int SENSORS = 200;
    private static final int MOST_BLOWS = 300;

    private static ShockFinding find(List<Blow> blows) {
        return ShockFinding.of(new Series(blows, HARMLESS, MATTERS), WANTED);
    }

    @Test
    void theFirstBlowIsInTheMiddleAndTheLadderReachesBeyondBoth() {
        ShockFinding finding = find(List.of());
        assertThat(finding.advice()).isEqualTo(Advice.BEGIN);
        assertThat(finding.next().orElseThrow().joules())
                .isCloseTo(Math.sqrt(HARMLESS.joules() * MATTERS.joules()), within(1e-9));
        assertThat(finding.ladder().getFirst().joules()).isLessThan(HARMLESS.joules());
        assertThat(finding.ladder().getLast().joules()).isGreaterThan(MATTERS.joules());
    }

    @Test
    void followingTheAdviceEndsAtASettingThatTrulyDoesIt() {
        SplittableRandom chance = new SplittableRandom(20260611);
        int left = 0;
        int right = 0;
        int canDo = 0;
        long blowsGiven = 0;
        for (int sensor = 0; sensor < SENSORS; sensor++) {
            double atOne = 0.3 + 2 * chance.nextDouble();
            double spread = 0.04 + 0.16 * chance.nextDouble();
            List<Blow> blows = new ArrayList<>();
            ShockFinding finding = find(blows);
            double setting = 4;
            while (finding.advice() != Advice.LEAVE
                    && finding.advice() != Advice.NONE_WILL_DO
                    && blows.size() < MOST_BLOWS) {
                setting = switch (finding.advice()) {
                    case BEGIN -> setting;
                    case GO_ON, BETWEEN -> finding.setting().orElseThrow();
                    case MORE_SENSITIVE -> finding.setting().orElseThrow() + 2;
                    case LESS_SENSITIVE -> Math.max(0, finding.setting().orElseThrow() - 2);
                    case LEAVE, NONE_WILL_DO -> throw new IllegalStateException("it goes on");
                };
                Knock knock = finding.next().orElseThrow();
                double half = Math.log10(atOne) - Math.log10(2) * (setting - 1);
                boolean noticed = Math.log10(knock.joules()) > half + spread * chance.nextGaussian();
                blows.add(new Blow(setting, knock, noticed));
                finding = find(blows);
            }
            blowsGiven += blows.size();
            Demand demand = new Series(blows, HARMLESS, MATTERS).demand(WANTED);
            canDo += ShockSetting.meets(Math.log10(demand.middleJoules()), 0, spread, demand) ? 1 : 0;
            if (finding.best().isPresent()) {
                left++;
                double at = Math.log10(atOne)
                        - Math.log10(2) * (finding.best().orElseThrow().setting() - 1);
                right += ShockSetting.meets(at, 0, spread, demand) ? 1 : 0;
            }
        }
        Note.that("shock sensors set: %d of %d (some setting of %d does it), %d of them truly, %.0f blows each"
                .formatted(left, SENSORS, canDo, right, (double) blowsGiven / SENSORS));
        assertThat(left).isGreaterThan(canDo * 8 / 10);
        assertThat(right).isGreaterThanOrEqualTo(left * 95 / 100);
    }

    @Test
    void aSensorThatAnswersAtRandomIsNeverLeftAtASetting() {
        SplittableRandom chance = new SplittableRandom(5);
        List<Blow> blows = new ArrayList<>();
        ShockFinding finding = find(blows);
        for (int k = 0; k < 80 && finding.next().isPresent(); k++) {
            blows.add(new Blow(4, finding.next().orElseThrow(), chance.nextBoolean()));
            finding = find(blows);
            assertThat(finding.advice()).isNotEqualTo(Advice.LEAVE);
            if (finding.setting().filter(s -> s != 4).isPresent()) {
                break;
            }
        }
    }

    @Test
    void oneThatAlwaysAnswersOrNeverDoesSaysNothing() {
        for (boolean answer : new boolean[] {true, false}) {
            List<Blow> blows = new ArrayList<>();
            Knock knock = MATTERS;
            for (int k = 0; k < 6; k++) {
                blows.add(new Blow(2, knock, answer));
                knock = knock.bringing(knock.joules() * (answer ? Math.sqrt(0.5) : Math.sqrt(2)));
            }
            assertThat(find(blows).best()).isEmpty();
            assertThat(find(blows).settings().getFirst().estimate()).isEmpty();
        }
    }
}
