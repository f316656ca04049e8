package org.loomproof.workshop.planner.rule;

import java.util.List;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.explain.Terms;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.words.Phrase;

/** Leads that are not joined, each with its reason. */
final class Aside {

    private Aside() {}

    static Decision cap(Lead lead, Phrase because, List<Phrase> insteadOf) {
        return new Decision.Leave(new Hookup.CapAndKeep(lead.id(), because, insteadOf));
    }

    static Decision cap(Lead lead, Phrase because) {
        return cap(lead, because, List.of());
    }

    static Decision trim(Lead lead, Phrase because) {
        return new Decision.Leave(new Hookup.Trim(lead.id(), because, List.of()));
    }

    static Decision hold(Lead lead, Wish serves, Measurement until, Phrase because) {
        return new Decision.Leave(new Hookup.Hold(lead.id(), serves, until, because, List.of()));
    }

    static Decision hold(Lead lead, Wish serves, Found.Waiting waiting) {
        return hold(lead, serves, waiting.until(), waiting.because());
    }

    /** Nobody asked for what the lead does. */
    static Decision notAskedFor(Lead lead, Wish wish) {
        return cap(
                lead,
                lead.alwaysUsed()
                        ? Phrase.of("cap.always-used-not-asked-for", Terms.wish(wish))
                        : Phrase.of("cap.not-asked-for", Terms.wish(wish)));
    }

    /** The wish that the lead serves is turned down. */
    static Decision refused(Lead lead, Wish wish) {
        return cap(lead, Phrase.of("cap.refused", Terms.wish(wish)));
    }

    /** Another lead already does the work. */
    static Decision another(Lead lead, Lead instead) {
        return cap(lead, Phrase.of("cap.another-does-it", instead.id()));
    }

    /** The kit says of the lead what does not fit what it is for. */
    static Decision misfit(Lead lead, Wish wish) {
        return hold(
                lead,
                wish,
                Measurements.portOf(lead),
                Phrase.of("hold.port-does-not-fit", Terms.leadRole(lead.role()), Terms.port(lead.port())));
    }

    static List<Decision> allRefused(List<Lead> leads, Wish wish) {
        return leads.stream().map(lead -> refused(lead, wish)).toList();
    }

    static List<Decision> allHeld(List<Lead> leads, Wish wish, Found.Waiting waiting) {
        return leads.stream().map(lead -> hold(lead, wish, waiting)).toList();
    }
}
