package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;

/** All rules. Each role of a lead and each wish has exactly one of them. */
public final class Rules {

    /** In the order in which a bench card is read: what it lives on, what it reads, what it does, what is left. */
    public static final List<Rule> ALL = List.of(
            new SupplyRule(),
            new GroundRule(),
            new IgnitionSenseRule(),
            new OpeningsRule(),
            new StarterInterruptRule(),
            new SounderRule(),
            new HornRule(),
            new LampsRule(),
            new InteriorLightRule(),
            new LocksRule(),
            new TrunkReleaseRule(),
            new WindowsRule(),
            new IndicatorRule(),
            BareSenderRule.of(LeadRole.OVERRIDE_BUTTON, Extra.Kind.OVERRIDE_BUTTON, Wish.OVERRIDE_BUTTON),
            BareSenderRule.of(LeadRole.SENSOR_INPUT, Extra.Kind.SHOCK_SENSOR, Wish.SHOCK_SENSOR, Wish.FURTHER_SENSORS),
            new RuleSetRule(),
            new NeverRule(),
            new SpareRule());

    private Rules() {}

    /** Every question of a job, rule by rule. */
    public static List<Question> questions(Job job) {
        List<Question> questions = new ArrayList<>();
        for (Rule rule : ALL) {
            List<Lead> leads = job.brief().kit().leads().stream()
                    .filter(lead -> rule.roles().contains(lead.role()))
                    .toList();
            List<Wish> wishes = rule.wishes().stream().sorted().toList();
            List<Lead> plugged = leads.stream().filter(PluggedRule::isPlugged).toList();
            for (int i = 0; i < plugged.size(); i++) {
                questions.add(PluggedRule.question(job, plugged.get(i), i, wishes));
            }
            questions.addAll(rule.questions(
                    job, leads.stream().filter(l -> !PluggedRule.isPlugged(l)).toList()));
        }
        return questions;
    }
}
