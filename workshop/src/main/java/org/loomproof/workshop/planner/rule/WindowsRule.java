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

/** The windows are closed by the wire that their switch closes them with. */
public final class WindowsRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.WINDOW);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(Wish.WINDOWS);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return OneOutput.questions(job, leads, Wish.WINDOWS, lead -> {
            Found found = job.finder().one(CircuitRole.WINDOW, Joint.POWER_TAP);
            return FactoryOutputs.options(job, lead, Wish.WINDOWS, found, AllowedDrop.LOCK_MOTOR);
        });
    }
}
