package org.loomproof.workshop.prover;

import static org.loomproof.workshop.prover.Proven.proven;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.fixture.Jobs;

class ProverTest {

    @Test
    void everyClaimHoldsForTheHandcart() {
        proven(Jobs.simple()).holdsThroughout();
    }

    @Test
    void everyClaimHoldsForTheVan() {
        proven(Jobs.vanJob()).holdsThroughout();
    }
}
