package org.loomproof.workshop.prover.explore;

import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;

/** What every area of a proof shares. */
record ExplorerJob(Brief brief, Plan plan, Vehicle stock, Vehicle fitted, Variations variations, Onlooker onlooker) {}
