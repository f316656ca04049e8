package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.planner.coupling.Supplies;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.words.Phrase;

/**
 * The controller lives on a constant supply, through a fuse of its own near the take-off. Where there are several supplies,
 * the one with the largest factory fuse has the most to spare. A guess will not do: the joint carries power.
 */
public final class SupplyRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.SUPPLY);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of();
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return leads.stream()
                .map(lead -> Question.settled("supply " + lead.id(), decide(job, lead)))
                .toList();
    }

    private static Option decide(Job job, Lead lead) {
        if (!(lead.port() instanceof Port.Supply)) {
            return Option.of(List.of(Aside.misfit(lead, Wish.BASICS)));
        }
        return switch (job.constant()) {
            case Found.Usable(var circuits, var passedOver) ->
                Option.of(List.of(join(job, lead, circuits.getFirst(), passedOver)))
                        .beware(List.of(
                                Phrase.of("caution.battery-negative-off"),
                                Phrase.of("caution.fuse-last"),
                                Phrase.of("caution.controller-place")));
            case Found.Waiting waiting -> Option.of(List.of(Aside.hold(lead, Wish.BASICS, waiting)));
            case Found.Forbidden(var because, var possibleIf) -> Option.of(List.of(Aside.cap(lead, because)));
        };
    }

    private static Decision join(Job job, Lead lead, Circuit constant, List<Phrase> passedOver) {
        return new Decision.Join(
                lead,
                Wish.BASICS,
                List.of(constant.id()),
                Supplies.fused(
                        lead,
                        constant,
                        job.run(constant),
                        job.brief().kit().standby().high()),
                Phrase.of("rule.supply", constant.id()),
                passedOver);
    }
}
