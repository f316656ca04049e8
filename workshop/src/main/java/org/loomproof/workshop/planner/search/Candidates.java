package org.loomproof.workshop.planner.search;

import java.util.List;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.rule.Searched;
import org.loomproof.workshop.words.Phrase;

/**
 * Plans that may do, the one first that the rules would take.
 *
 * @param plans at least one
 * @param thereAre how many there are in all
 * @param bounds what was left out, in words; empty when nothing was
 * @param searches what was looked through, lead by lead
 */
public record Candidates(List<Plan> plans, long thereAre, List<Phrase> bounds, List<Searched> searches) {

    public Candidates {
        searches = List.copyOf(searches);
        plans = List.copyOf(plans);
        bounds = List.copyOf(bounds);
        if (plans.isEmpty()) {
            throw new IllegalArgumentException("no candidate");
        }
    }
}
