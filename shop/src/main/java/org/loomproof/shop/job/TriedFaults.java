package org.loomproof.shop.job;

import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MaskedPairs;

/**
 * A plan's faults and slips, tried.
 *
 * @param brief what was given, completed
 * @param faults what was found, the worst first, and the tests that notice it
 * @param pairs what two at once come to, where that was asked for
 */
public record TriedFaults(Brief brief, FaultProof faults, Optional<MaskedPairs> pairs) {

    /** Whether everything that was asked for was looked at. */
    public boolean isWhole() {
        return faults.left() == 0 && pairs.map(p -> p.left() == 0).orElse(true);
    }
}
