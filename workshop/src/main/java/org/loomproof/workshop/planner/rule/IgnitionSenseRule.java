package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Reading;
import org.loomproof.workshop.planner.coupling.Source;
import org.loomproof.workshop.planner.survey.Finder;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.words.Phrase;

/**
 * The controller must know when the key is on: its lead reads the ignition that stays alive while the starter turns. A lead
 * thinner than the factory fuse allows goes through a small fuse near the take-off.
 */
public final class IgnitionSenseRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.IGNITION_SENSE);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(Wish.BASICS);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return leads.stream()
                .map(lead -> Question.settled("ignition " + lead.id(), Option.of(List.of(decide(job, lead)))))
                .toList();
    }

    private static Decision decide(Job job, Lead lead) {
        if (!(lead.port() instanceof Port.Input input)) {
            return Aside.misfit(lead, Wish.BASICS);
        }
        return switch (job.finder().one(CircuitRole.IGNITION, Joint.SIGNAL_TAP)) {
            case Found.Usable(var circuits, var passedOver) -> read(job, lead, input, circuits.getFirst(), passedOver);
            case Found.Waiting waiting -> Aside.hold(lead, Wish.BASICS, waiting);
            case Found.Forbidden(var because, var possibleIf) -> Aside.cap(lead, because);
        };
    }

    private static Decision read(Job job, Lead lead, Port.Input input, Circuit ignition, List<Phrase> passedOver) {
        boolean fused = needsFuse(lead, ignition);
        Source source =
                fused ? new Source.Fused(job.ignitionFeed(ignition)) : new Source.Wire(ignition, job.run(ignition));
        Reading reading = new Reading(lead, input.active(), job.signalDiode());
        List<Phrase> lost = new ArrayList<>(passedOver);
        if (fused) {
            lost.add(Phrase.of("lost.unfused", ignition.id()));
        }
        return switch (input.active()) {
            case HIGH -> join(lead, ignition, reading.direct(List.of(source)), "rule.ignition-sense", lost);
            case LOW -> {
                RelayType relay = job.listRelays().getFirst();
                Draft draft =
                        reading.inverted(List.of(source), new Reading.Inverter(relay, job.ignitionFeed(ignition)));
                yield join(lead, ignition, draft, "rule.ignition-sense-inverted", lost);
            }
        };
    }

    private static Decision join(Lead lead, Circuit ignition, Draft draft, String because, List<Phrase> lost) {
        return new Decision.Join(
                lead, Wish.BASICS, List.of(ignition.id()), draft, Phrase.of(because, ignition.id()), lost);
    }

    /** True when the factory fuse is not known, or is larger than what protects the lead. */
    private static boolean needsFuse(Lead lead, Circuit ignition) {
        double ceiling = Conductors.fuseCeiling(lead.size().typical()).value();
        return Finder.findFuseAmps(ignition).map(factory -> factory > ceiling).orElse(true);
    }
}
