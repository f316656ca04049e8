package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.planner.explain.Terms;
import org.loomproof.workshop.words.Phrase;

/** Leads that no wish of an order needs: insulated one by one, labelled and kept. A bare end is a blown fuse on the first bump. */
public final class SpareRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.BRAKE_INPUT, LeadRole.OTHER);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of();
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return leads.stream()
                .map(lead -> Question.settled(
                        "spare " + lead.id(),
                        Option.of(List.of(Aside.cap(lead, Phrase.of("cap.spare", Terms.leadRole(lead.role())))))))
                .toList();
    }
}
