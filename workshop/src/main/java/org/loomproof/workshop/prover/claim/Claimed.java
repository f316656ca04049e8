package org.loomproof.workshop.prover.claim;

import java.util.Optional;
import org.loomproof.workshop.brief.order.DeclaredChange;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Residual;

/** What a claim comes to. */
public sealed interface Claimed {

    /**
     * Something to be shown in every situation.
     *
     * @param toShow with whatever change the order declares allowed
     * @param onPurpose that change; empty where the order declares none
     */
    record ToShow(Case toShow, Optional<OnPurpose> onPurpose) implements Claimed {

        /** Something that no declared change touches. */
        public ToShow(Case toShow) {
            this(toShow, Optional.empty());
        }
    }

    /**
     * A declared change, and the same case with other limits, by which is told what comes of it.
     *
     * @param change what the order declares
     * @param asBefore the case as if nothing were declared: where it holds, nothing changes
     * @param twice the case with twice as much allowed: what is beyond that is another change than the declared one
     */
    record OnPurpose(DeclaredChange change, Case asBefore, Case twice) {}

    /** Something decided without a walk through situations. */
    record Decided(ClaimResult result) implements Claimed {}

    /** A danger that no claim covers, told beside them. */
    record Left(Residual residual) implements Claimed {}
}
