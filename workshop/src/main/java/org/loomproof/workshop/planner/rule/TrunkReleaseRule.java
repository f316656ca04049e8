package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/** The trunk is released where its switch releases it. */
public final class TrunkReleaseRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.TRUNK_RELEASE);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(Wish.TRUNK_RELEASE);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return OneOutput.questions(job, leads, Wish.TRUNK_RELEASE, lead -> {
            Found found = job.finder().one(CircuitRole.TRUNK_RELEASE, Joint.POWER_TAP);
            // A leg of a motor that turns both ways rests at the pole it comes back by; a tap there would be a short
            // circuit.
            if (found instanceof Found.Usable leg
                    && LegCut.given(leg.first()).flatMap(pole -> pole).isPresent()
                    && LegCut.isHeld(job, leg.first())) {
                AddedPartId fuse = Draft.local(lead.id(), "load-fuse");
                return LegCut.of(job, lead, Wish.TRUNK_RELEASE, leg.first(), fuse, false, "latch-leg").stream()
                        .map(option -> option.beware(List.of(
                                Phrase.of("caution.latch-leg", leg.first().id()))))
                        .toList();
            }
            return FactoryOutputs.options(job, lead, Wish.TRUNK_RELEASE, found, AllowedDrop.LOCK_MOTOR);
        });
    }
}
