package org.loomproof.shop.job;

import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.weigh.Search;

/**
 * A job that was planned and proven, without papers.
 *
 * @param brief what was given, completed
 * @param plan every lead decided
 * @param proof what was found, with every bound on the search
 * @param search what was looked through to find the plan
 */
public record JudgedJob(Brief brief, Plan plan, Proof proof, Search search) {}
