package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.words.Phrase;

/** An indicator without a plug of its own hangs on its output like any other load out of the box. */
public final class IndicatorRule implements Rule {

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.INDICATOR);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(Wish.INDICATOR);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return OneOutput.questions(job, leads, Wish.INDICATOR, lead -> {
            List<Extra> indicators = job.listExtras(Extra.Kind.INDICATOR);
            return indicators.isEmpty()
                    ? List.of(Option.refused(
                            new Refusal(
                                    Wish.INDICATOR,
                                    Phrase.of("refuse.no-indicator"),
                                    Phrase.of("possible.no-indicator")),
                            List.of(Aside.refused(lead, Wish.INDICATOR))))
                    : AddedLoads.options(job, lead, Wish.INDICATOR, indicators.subList(0, 1));
        });
    }
}
