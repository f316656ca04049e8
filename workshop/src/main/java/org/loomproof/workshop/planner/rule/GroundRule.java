package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.planner.coupling.Supplies;
import org.loomproof.workshop.words.Phrase;

/** The controller's ground goes to bare metal of the body by a screw of its own, never to a screw that holds trim or a factory ground. */
public final class GroundRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.GROUND);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of();
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return leads.stream()
                .map(lead -> Question.settled("ground " + lead.id(), decide(job, lead)))
                .toList();
    }

    private static Option decide(Job job, Lead lead) {
        if (!(lead.port() instanceof Port.Ground)) {
            return Option.of(List.of(Aside.misfit(lead, Wish.BASICS)));
        }
        return Option.of(List.of(new Decision.Join(
                lead,
                Wish.BASICS,
                List.of(),
                Supplies.ground(
                        lead, job.usualRun(), job.brief().kit().standby().high()),
                Phrase.of("rule.ground"),
                GroundPoints.passedOver(job))));
    }
}
