package org.loomproof.workshop.trade.resistor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.quantity.Ohms;

/** The values against the rule of IEC 60063: step k of n in a decade is 10 to the power k/n, rounded. */
class PreferredValuesTest {

    @Test
    void ninetySixStepsADecadeFollowTheRuleToThreeFigures() {
        for (int k = 0; k < 96; k++) {
            double step = Math.round(Math.pow(10, k / 96.0) * 100) / 100.0;
            assertThat(PreferredValues.E96.listDecade().get(k)).isCloseTo(step, within(1e-9));
        }
        assertThat(PreferredValues.E96.listDecade()).hasSize(96);
    }

    @Test
    void twentyFourStepsAreNowhereFurtherFromTheRuleThanTheirTolerance() {
        assertThat(PreferredValues.E24.listDecade()).hasSize(24).isSorted();
        for (int k = 0; k < 24; k++) {
            double rule = Math.pow(10, k / 24.0);
            assertThat(PreferredValues.E24.listDecade().get(k) / rule)
                    .isCloseTo(1, within(PreferredValues.E24.tolerance()));
        }
    }

    @Test
    void theNearestAndTheLargestUnderAreOfTheRightDecade() {
        assertThat(PreferredValues.E96.nearest(new Ohms(468.5))).isEqualTo(new Ohms(464));
        assertThat(PreferredValues.E24.largestUpTo(new Ohms(7619))).isEqualTo(new Ohms(7500));
        assertThat(PreferredValues.E24.largestUpTo(new Ohms(7500))).isEqualTo(new Ohms(7500));
    }
}
