package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.planner.coupling.Source;
import org.loomproof.workshop.planner.grammar.Sense.Held;
import org.loomproof.workshop.planner.survey.Finder;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.words.Phrase;

/**
 * The controller must know when the key is on: its lead reads the ignition that stays alive while the starter turns, through a
 * small fuse near the take-off, so that a short of it takes the ignition away from nobody.
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
                .map(lead -> new Question("ignition " + lead.id(), ways(job, lead)))
                .toList();
    }

    private static List<Option> ways(Job job, Lead lead) {
        if (!(lead.port() instanceof Port.Input)) {
            return List.of(Option.of(List.of(Aside.misfit(lead, Wish.BASICS))));
        }
        return switch (job.finder().ignition(Joint.SIGNAL_TAP)) {
            case Found.Usable(var circuits, var passedOver) -> read(job, lead, circuits.getFirst(), passedOver);
            case Found.Waiting waiting -> List.of(Option.of(List.of(Aside.hold(lead, Wish.BASICS, waiting))));
            case Found.Forbidden(var because, var possibleIf) -> List.of(Option.of(List.of(Aside.cap(lead, because))));
        };
    }

    private static List<Option> read(Job job, Lead lead, Circuit ignition, List<Phrase> passedOver) {
        List<Phrase> lost = new ArrayList<>(passedOver);
        lost.add(Phrase.of(needsFuse(lead, ignition) ? "lost.unfused" : "lost.stops-engine", ignition.id()));
        // The key bears what a coil draws, and it says nothing while it is out: what is fed from it may be fed from
        // there alone.
        Read read = new Read(
                new Source.Fused(job.ignitionFeed(ignition)), Held.PULLED_LOW, Held.HIGH, true, Optional.empty());
        InputWords words = new InputWords(job, lead, List.of(read), Optional.of(job.ignitionFeed(ignition)));
        return words.list().stream()
                .map(way -> join(lead, ignition, way, lost).searched(words.searched()))
                .toList();
    }

    private static Option join(Lead lead, Circuit ignition, InputWords.Way way, List<Phrase> lost) {
        boolean inverts = ((Port.Input) lead.port()).active() == Port.Active.LOW;
        Phrase because = Phrase.of(inverts ? "rule.ignition-sense-inverted" : "rule.ignition-sense", ignition.id());
        return Option.of(
                List.of(new Decision.Join(lead, Wish.BASICS, List.of(ignition.id()), way.draft(), because, lost)));
    }

    /** True when the factory fuse is not known, or is larger than what protects the lead. */
    private static boolean needsFuse(Lead lead, Circuit ignition) {
        double ceiling = Conductors.fuseCeiling(lead.size().typical()).value();
        return Finder.findFuseAmps(ignition).map(factory -> factory > ceiling).orElse(true);
    }
}
