package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomproof.workshop.prover.Proven.proven;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.Severity;

class EngineKeepsRunningTest {

    private static final String CLAIM = "engine-keeps-running ignition-coil";

    @Test
    void aCoilOnTheIgnitionStopsNothing() {
        proven(Jobs.simple()).holds(CLAIM);
    }

    @Test
    void aContactInSeriesWithTheIgnitionStopsTheEngineWhenArmed() {
        Jobs.Job cart = Jobs.simple();
        Plan cut = Altered.rewired(
                Altered.rewired(cart.plan(), "W10", "K1 30", "circuit ignition before"),
                "W11",
                "K1 87a",
                "circuit ignition after");
        assertThat(proven(cart.with(cut)).steps(CLAIM)).containsExactly("arm and wait 20 s", "turn the key to on");
    }

    @Test
    void aShortAheadOfTheTapsOwnFuseIsListedAsLossOfControl() {
        Mishaps cart = Mishaps.of(Jobs.simple());
        assertThat(cart.result("chafed-to-body W7").severity()).isEqualTo(Severity.FIRE_OR_LOSS_OF_CONTROL);
        assertThat(cart.broken("chafed-to-body W7")).contains(CLAIM);
    }

    @Test
    void aShortBehindThatFuseOpensItAloneAndTheEngineRunsOn() {
        Mishaps cart = Mishaps.of(Jobs.simple());
        assertThat(cart.opens("chafed-to-body W6")).containsExactly("added fuse F2");
        assertThat(cart.broken("chafed-to-body W6")).doesNotContain(CLAIM);
    }
}
