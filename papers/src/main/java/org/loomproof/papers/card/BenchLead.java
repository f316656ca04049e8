package org.loomproof.papers.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.Plan;

/**
 * One lead of the kit as the bench has it, on paper and on a screen.
 *
 * @param lead which
 * @param kind the word of what is done with it in styles and message keys, such as {@code cap-and-keep}
 * @param look how it is known: its insulation drawn, its colour in letters, what looks like it
 * @param work what is done with it, and why
 */
public record BenchLead(Lead lead, String kind, List<Markup> look, List<Markup> work) {

    public BenchLead {
        look = List.copyOf(look);
        work = List.copyOf(work);
    }

    /** Every lead once, plug by plug in the order they lie in the loom. */
    public static Map<String, List<BenchLead>> byPlug(Brief brief, Plan plan, Wording words) {
        Map<String, List<Lead>> plugs = new LinkedHashMap<>();
        for (Lead lead : brief.kit().leads()) {
            plugs.computeIfAbsent(lead.plug(), plug -> new ArrayList<>()).add(lead);
        }
        LeadText text = new LeadText(brief, plan, words);
        Map<String, List<BenchLead>> told = new LinkedHashMap<>();
        plugs.forEach((plug, leads) ->
                told.put(plug, leads.stream().map(lead -> text.of(lead, leads)).toList()));
        return told;
    }
}
