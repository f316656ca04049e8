package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** The factory horn is sounded where its switch sounds it: at the wire to the horn relay, or at the horn. */
public final class HornRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.HORN);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(Wish.HORN);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return OneOutput.questions(job, leads, Wish.HORN, lead -> {
            Optional<Refusal> tooLong = RuleSetRule.tooLong(job, Wish.HORN);
            if (tooLong.isPresent()) {
                return List.of(Option.refused(tooLong.get(), List.of(Aside.refused(lead, Wish.HORN))));
            }
            Found found = job.finder().one(CircuitRole.HORN, Joint.POWER_TAP);
            return FactoryOutputs.options(job, lead, Wish.HORN, found, AllowedDrop.LAMP);
        });
    }
}
