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
 * @param sharing of one of these plans, or of one that it gave, those in which one part stands for several
 */
public record Candidates(
        List<Plan> plans, long thereAre, List<Phrase> bounds, List<Searched> searches, Sharer sharing) {

    /** Gives plans with fewer parts that do the same, those with the fewest first. */
    @FunctionalInterface
    public interface Sharer {
        /** Nothing is shared. */
        Sharer NOTHING = plan -> List.of();

        /** Plans in which one part stands for several of that plan. */
        List<Plan> share(Plan plan);
    }

    /** Candidates in which nothing is shared further. */
    public Candidates(List<Plan> plans, long thereAre, List<Phrase> bounds, List<Searched> searches) {
        this(plans, thereAre, bounds, searches, Sharer.NOTHING);
    }

    public Candidates {
        searches = List.copyOf(searches);
        plans = List.copyOf(plans);
        bounds = List.copyOf(bounds);
        if (plans.isEmpty()) {
            throw new IllegalArgumentException("no candidate");
        }
    }
}
