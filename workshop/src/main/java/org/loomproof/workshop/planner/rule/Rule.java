package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;

/** Speaks for some roles of leads and some wishes. Every role and every wish has exactly one rule. */
public interface Rule {

    /** The roles of the leads it decides. */
    Set<LeadRole> roles();

    /** The wishes it grants or turns down. */
    Set<Wish> wishes();

    /**
     * What it decides. Together the questions decide each lead given exactly once.
     *
     * @param leads all leads of its roles that do not go to an extra by a plug of their own
     */
    List<Question> questions(Job job, List<Lead> leads);
}
