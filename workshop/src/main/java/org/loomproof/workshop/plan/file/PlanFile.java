package org.loomproof.workshop.plan.file;

import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.plan.Plan;

/**
 * A plan with what it was made from.
 *
 * @param given the brief and its three texts
 * @param plan the plan
 */
public record PlanFile(ReadBrief given, Plan plan) {}
