package org.loomproof.workshop.planner.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.words.Phrase;

/**
 * A button or sensor is joined by the plug it comes with. A kit that leaves a bare lead for one does not say what is to hang
 * on it, so nothing is joined.
 */
public record WithoutPlugRule(LeadRole role, Wish wish, Set<Wish> wishes) implements Rule {

    /** Speaks for leads of a role; the first wish is the one named when nobody asked for any. */
    public static WithoutPlugRule of(LeadRole role, Wish wish, Wish... more) {
        Set<Wish> all = new HashSet<>(Set.of(more));
        all.add(wish);
        return new WithoutPlugRule(role, wish, Set.copyOf(all));
    }

    @Override
    public Set<LeadRole> roles() {
        return Set.of(role);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        List<Wish> asked = wishes.stream().filter(job::wants).sorted().toList();
        Optional<Lead> plugged =
                job.listLeads(role).stream().filter(PluggedRule::isPlugged).findFirst();
        List<Refusal> refusals = plugged.isPresent()
                ? List.of()
                : asked.stream()
                        .map(w -> new Refusal(w, Phrase.of("refuse.no-plug"), Phrase.of("possible.no-plug")))
                        .toList();
        return leads.stream()
                .map(lead -> Question.settled(
                        role.word() + " " + lead.id(),
                        new Option(List.of(aside(lead, asked, plugged)), refusals, List.of())))
                .toList();
    }

    private Decision aside(Lead lead, List<Wish> asked, Optional<Lead> plugged) {
        if (asked.isEmpty()) {
            return Aside.notAskedFor(lead, wish);
        }
        return plugged.map(p -> Aside.another(lead, p)).orElseGet(() -> Aside.refused(lead, asked.getFirst()));
    }
}
