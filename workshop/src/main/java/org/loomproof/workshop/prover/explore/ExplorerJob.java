package org.loomproof.workshop.prover.explore;

import java.util.function.BooleanSupplier;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;

/**
 * What every area of a proof shares.
 *
 * @param isEnough true from when nothing more is to be looked at
 */
record ExplorerJob(
        Brief brief,
        Plan plan,
        Vehicle stock,
        Vehicle fitted,
        Variations variations,
        Onlooker onlooker,
        BooleanSupplier isEnough) {}
