package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;

/** Nothing is looked up by what a thing is called: with roles, colours and names gone, network and verdicts are as they were. */
class RoleBlindTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void namesDecideNothing(long seed) {
        Blindfold.check(Jobs.vanJob(), seed);
    }

    /** Not only what holds: a plan with a mistake in it breaks the same claims by the same amounts. */
    @ParameterizedTest
    @ValueSource(longs = {4})
    void namesDecideNothingOfABrokenPlan(long seed) {
        Jobs.Job van = Jobs.vanJob();
        Jobs.Job broken = van.with(Altered.rewired(van.plan(), "W11", "K1 87", "circuit starter after"));
        Blindfold.check(broken, seed);
        assertThat(Proven.proven(broken).notHolding()).isNotEmpty();
    }
}
