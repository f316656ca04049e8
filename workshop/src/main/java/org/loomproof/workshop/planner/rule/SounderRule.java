package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.words.Phrase;

/**
 * The siren out of the kit's box hangs on the siren output and has a ground of its own. A second sounder goes on a second
 * siren lead, or beside the first when the output carries both.
 */
public final class SounderRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.SIREN);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(Wish.SIREN, Wish.SECOND_SOUNDER);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        if (leads.isEmpty()) {
            return List.of();
        }
        List<Extra> sounders = job.listExtras(Extra.Kind.SOUNDER);
        List<Refusal> refusals = new ArrayList<>();
        List<Extra> wanted = new ArrayList<>();
        take(job, Wish.SIREN, sounders, 0, wanted, refusals);
        take(job, Wish.SECOND_SOUNDER, sounders, 1, wanted, refusals);
        List<Question> questions = new ArrayList<>();
        for (int i = 0; i < leads.size(); i++) {
            Lead lead = leads.get(i);
            List<Option> options = options(job, leads, i, wanted);
            String name = "siren " + lead.id();
            questions.add(new Question(name, i == 0 ? refusing(options, refusals) : options));
        }
        return questions;
    }

    private static void take(
            Job job, Wish wish, List<Extra> sounders, int number, List<Extra> wanted, List<Refusal> refusals) {
        if (!job.wants(wish)) {
            return;
        }
        if (number < sounders.size()) {
            Extra sounder = sounders.get(number);
            RuleSetRule.forbids(job, wish, sounder).ifPresentOrElse(refusals::add, () -> wanted.add(sounder));
        } else {
            refusals.add(new Refusal(wish, Phrase.of("refuse.no-sounder"), Phrase.of("possible.no-sounder")));
        }
    }

    private static List<Option> options(Job job, List<Lead> leads, int number, List<Extra> wanted) {
        Lead lead = leads.get(number);
        boolean eachItsOwn = leads.size() >= wanted.size();
        List<Extra> here = eachItsOwn
                ? wanted.subList(Math.min(number, wanted.size()), Math.min(number + 1, wanted.size()))
                : number == 0 ? wanted : List.of();
        if (!here.isEmpty()) {
            Wish serves = number == 0 && job.wants(Wish.SIREN) ? Wish.SIREN : Wish.SECOND_SOUNDER;
            return AddedLoads.options(job, lead, serves, here);
        }
        boolean asked = job.wants(Wish.SIREN) || job.wants(Wish.SECOND_SOUNDER);
        Decision aside = !asked
                ? Aside.notAskedFor(lead, Wish.SIREN)
                : wanted.isEmpty() ? Aside.refused(lead, Wish.SIREN) : Aside.another(lead, leads.getFirst());
        return List.of(Option.of(List.of(aside)));
    }

    private static List<Option> refusing(List<Option> options, List<Refusal> refusals) {
        return options.stream()
                .map(o -> {
                    List<Refusal> all = new ArrayList<>(o.refusals());
                    all.addAll(refusals);
                    return new Option(o.decisions(), all, o.cautions(), o.searches());
                })
                .toList();
    }
}
