package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.words.Phrase;

/**
 * What must not be done: nothing that we plan may stop a moving engine, cut an ignition, fuel or pump circuit, or turn an
 * engine with nobody at the wheel. A refusal belongs to its wish; the rest of the order is planned.
 */
public final class NeverRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.REMOTE_START, LeadRole.TRACKER);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(Wish.REMOTE_START, Wish.ENGINE_STOP_WHILE_MOVING, Wish.IGNITION_OR_PUMP_CUT, Wish.TRACKER);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        List<Refusal> refusals = wishes().stream()
                .sorted()
                .filter(job::wants)
                .map(wish -> refusal(wish, job))
                .flatMap(Optional::stream)
                .toList();
        List<Question> questions = new ArrayList<>();
        questions.add(Question.settled("never", new Option(List.of(), refusals, List.of())));
        for (Lead lead : leads) {
            Wish wish = lead.role() == LeadRole.TRACKER ? Wish.TRACKER : Wish.REMOTE_START;
            Decision aside = job.wants(wish) ? Aside.refused(lead, wish) : Aside.notAskedFor(lead, wish);
            questions.add(Question.settled(wish.word() + " " + lead.id(), Option.of(List.of(aside))));
        }
        return questions;
    }

    private static Optional<Refusal> refusal(Wish wish, Job job) {
        return switch (wish) {
            case REMOTE_START -> Optional.of(remoteStart(job.brief().sheet()));
            case ENGINE_STOP_WHILE_MOVING -> Optional.of(refuse(wish, "engine-stop"));
            case IGNITION_OR_PUMP_CUT -> Optional.of(refuse(wish, "ignition-cut"));
            case TRACKER ->
                job.listLeads(LeadRole.TRACKER).stream().anyMatch(PluggedRule::isPlugged)
                        ? Optional.empty()
                        : Optional.of(refuse(wish, "tracker"));
            case BASICS,
                    WATCH_OPENINGS,
                    STARTER_INTERRUPT,
                    SIREN,
                    HORN,
                    SECOND_SOUNDER,
                    LAMPS,
                    INTERIOR_LIGHT,
                    LOCKS,
                    LOCK_ACTUATORS,
                    TRUNK_RELEASE,
                    WINDOWS,
                    SHOCK_SENSOR,
                    FURTHER_SENSORS,
                    INDICATOR,
                    OVERRIDE_BUTTON -> Optional.empty();
        };
    }

    private static Refusal remoteStart(Sheet sheet) {
        boolean hoodSwitch = !sheet.listCircuits(CircuitRole.HOOD_TRIGGER).isEmpty();
        return switch (sheet.vehicle().gearbox()) {
            case MANUAL -> refuse(Wish.REMOTE_START, "remote-start-manual");
            case NOT_SAID -> refuse(Wish.REMOTE_START, "remote-start-gearbox-not-said");
            case AUTOMATIC ->
                refuse(Wish.REMOTE_START, hoodSwitch ? "remote-start-automatic" : "remote-start-no-hood-switch");
        };
    }

    private static Refusal refuse(Wish wish, String key) {
        return new Refusal(wish, Phrase.of("refuse." + key), Phrase.of("possible." + key));
    }
}
