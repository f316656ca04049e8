package org.loomproof.workshop.goods.change;

import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;

/** A plan with the brief it was made from. */
public record PlanOf(Brief brief, Plan plan) {}
