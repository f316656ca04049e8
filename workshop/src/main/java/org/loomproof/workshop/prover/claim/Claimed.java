package org.loomproof.workshop.prover.claim;

import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.verdict.ClaimResult;

/** What a claim comes to. */
public sealed interface Claimed {

    /** Something to be shown in every situation. */
    record ToShow(Case toShow) implements Claimed {}

    /** Something decided without a walk through situations. */
    record Decided(ClaimResult result) implements Claimed {}
}
