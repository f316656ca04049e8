package org.loomproof.workshop.planner.rule;

import java.util.List;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.words.Phrase;

/** A lead that goes to something out of the box by its own plug: it is plugged in when it is wanted, and never meets the vehicle. */
public final class PluggedRule {

    private PluggedRule() {}

    /** True for a lead with a plug of its own; what starts an engine from afar is not plugged in, whatever its plug. */
    public static boolean isPlugged(Lead lead) {
        return lead.port() instanceof Port.ToExtra && lead.role() != LeadRole.REMOTE_START;
    }

    /**
     * What becomes of such a lead.
     *
     * @param number its place among the plugged leads of its rule: the first serves the first wish asked for, and so on
     * @param wishes the wishes it may serve, by the rule of its role
     */
    public static Question question(Job job, Lead lead, int number, List<Wish> wishes) {
        String extra = lead.port() instanceof Port.ToExtra(var name) ? name : "";
        List<Wish> asked = wishes.stream().filter(job::wants).toList();
        boolean known = job.brief().kit().findExtra(extra).isPresent();
        Wish serves = asked.isEmpty()
                ? wishes.stream().findFirst().orElse(Wish.BASICS)
                : asked.get(Math.min(number, asked.size() - 1));
        boolean plugged = !asked.isEmpty() || lead.alwaysUsed() || wishes.isEmpty();
        Decision decision = plugged
                ? new Decision.Join(
                        lead,
                        serves,
                        List.of(),
                        Draft.of("coupling.plug").build(),
                        Phrase.of(known ? "rule.plugged" : "rule.plugged-not-in-box", extra),
                        List.of())
                : Aside.notAskedFor(lead, serves);
        List<Phrase> cautions = plugged ? where(serves) : List.of();
        return Question.settled(
                "plug " + lead.id(), Option.of(List.of(decision)).beware(cautions));
    }

    /** What is said of the place of what serves a wish. */
    static List<Phrase> where(Wish wish) {
        return switch (wish) {
            case INDICATOR -> List.of(Phrase.of("caution.indicator-place"));
            // Where it goes is the order's to know: a plan's cautions are printed on papers that lie about.
            case OVERRIDE_BUTTON -> List.of(Phrase.of("caution.override-place"));
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
                    REMOTE_START,
                    ENGINE_STOP_WHILE_MOVING,
                    IGNITION_OR_PUMP_CUT,
                    TRACKER -> List.of();
        };
    }
}
