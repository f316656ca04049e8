package org.loomproof.workshop.planner.rule;

import java.util.List;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.planner.grammar.Enumeration;

/**
 * What was looked through for one lead and the circuits that it works or reads in one way.
 *
 * @param lead the lead
 * @param circuits the factory circuits; none where something added is worked or read
 * @param enumeration the words for that pairing
 */
public record Searched(LeadId lead, List<CircuitId> circuits, Enumeration<?> enumeration) {

    public Searched {
        circuits = List.copyOf(circuits);
    }
}
