package org.loomproof.workshop.prover.claim;

import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Residual;

/** What a claim comes to. */
public sealed interface Claimed {

    /** Something to be shown in every situation. */
    record ToShow(Case toShow) implements Claimed {}

    /** Something decided without a walk through situations. */
    record Decided(ClaimResult result) implements Claimed {}

    /** A danger that no claim covers, told beside them. */
    record Left(Residual residual) implements Claimed {}
}
