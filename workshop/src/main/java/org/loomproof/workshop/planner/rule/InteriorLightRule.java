package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** The interior light is switched on where its door switch does it, as a rule by relay: it draws more than a signal output carries. */
public final class InteriorLightRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.INTERIOR_LIGHT);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(Wish.INTERIOR_LIGHT);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return OneOutput.questions(job, leads, Wish.INTERIOR_LIGHT, lead -> {
            Found found = job.finder().one(CircuitRole.INTERIOR_LIGHT, Joint.POWER_TAP);
            return FactoryOutputs.options(job, lead, Wish.INTERIOR_LIGHT, found, AllowedDrop.LAMP);
        });
    }
}
