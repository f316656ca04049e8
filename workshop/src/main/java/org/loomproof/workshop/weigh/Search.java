package org.loomproof.workshop.weigh;

import java.util.List;
import org.loomproof.workshop.planner.rule.Searched;

/**
 * How much was looked through before a plan was picked.
 *
 * @param plansProven how many whole plans the prover judged, each until it had lost
 * @param solves operating points that were solved for it
 * @param leads how much of the grammar was enumerated, lead by lead, where a lead's coupling comes from it
 */
public record Search(long plansProven, long solves, List<Searched> leads) {

    /** A plan that was not searched for. */
    public static final Search NONE = new Search(0, 0, List.of());

    public Search {
        leads = List.copyOf(leads);
    }

    /** How many leads were looked through; one may be looked through in several ways. */
    public long countLeads() {
        return leads.stream().map(Searched::lead).distinct().count();
    }

    /** All words enumerated. */
    public long enumerated() {
        return leads.stream().mapToLong(l -> l.enumeration().enumerated()).sum();
    }

    /** Those that the prover might have been asked about. */
    public long offered() {
        return leads.stream().mapToLong(l -> l.enumeration().words().size()).sum();
    }
}
