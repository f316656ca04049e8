package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * The parking lamps are flashed. Where left and right are wires of their own, each gets a lamp output of its own when the kit
 * has two; otherwise one output works both, and neither may feed the other.
 */
public final class LampsRule implements Rule {

    private static final Wish WISH = Wish.LAMPS;

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.LAMPS);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(WISH);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        Found lamps = unlessWatched(job.finder().every(CircuitRole.PARKING_LAMP, Joint.POWER_TAP));
        if (!(lamps instanceof Found.Usable usable)
                || !job.wants(WISH)
                || usable.circuits().size() < 2
                || usable.circuits().size() > leads.size()) {
            return OneOutput.questions(job, leads, WISH, lead -> ways(job, lead, lamps));
        }
        List<Question> questions = new ArrayList<>();
        for (int i = 0; i < leads.size(); i++) {
            Lead lead = leads.get(i);
            List<Option> options = i < usable.circuits().size()
                    ? ways(job, lead, new Found.Usable(List.of(usable.circuits().get(i)), usable.passedOver()))
                    : List.of(Option.of(List.of(Aside.another(lead, leads.getFirst()))));
            questions.add(new Question(WISH.word() + " " + lead.id(), options));
        }
        return questions;
    }

    /** A module that watches its lamps takes current that it does not send for a fault: such lamps are not fed from outside. */
    private static Found unlessWatched(Found lamps) {
        if (lamps instanceof Found.Usable(var circuits, var passedOver)) {
            Optional<Circuit> watched =
                    circuits.stream().filter(LampsRule::isWatched).findFirst();
            if (watched.isPresent()) {
                return new Found.Forbidden(
                        Phrase.of("refuse.outage-watch", watched.get().id()), Phrase.of("possible.outage-watch"));
            }
        }
        return lamps;
    }

    /** True when lamps go to supply and a factory input hangs on their own wire. */
    private static boolean isWatched(Circuit circuit) {
        return Family.of(circuit.switching()) == Family.POSITIVE
                && circuit.paths().stream().flatMap(List::stream).anyMatch(PathStep.Input.class::isInstance);
    }

    private static List<Option> ways(Job job, Lead lead, Found lamps) {
        return FactoryOutputs.options(job, lead, WISH, lamps, AllowedDrop.LAMP);
    }
}
