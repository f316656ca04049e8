package org.loomproof.papers;

import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.verdict.Proof;

/**
 * What one job's papers are made from.
 *
 * @param brief what was given, completed
 * @param plan what was decided
 * @param proof its verdicts
 * @param faults what its faults and slips come to; without it there is no test order
 * @param planText the plan as a file, self-contained
 */
public record Material(Brief brief, Plan plan, Proof proof, Optional<FaultProof> faults, String planText) {}
