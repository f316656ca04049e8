package org.loomproof.shop.job;

import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.prover.FaultProof;

/**
 * A plan's faults and slips, tried.
 *
 * @param brief what was given, completed
 * @param faults what was found, the worst first, and the tests that notice it
 */
public record TriedFaults(Brief brief, FaultProof faults) {}
