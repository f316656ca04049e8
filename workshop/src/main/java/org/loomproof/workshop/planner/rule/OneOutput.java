package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;

/** A wish that the first lead of its role serves; any further lead of that role is kept. */
final class OneOutput {

    private OneOutput() {}

    static List<Question> questions(Job job, List<Lead> leads, Wish wish, Function<Lead, List<Option>> ways) {
        List<Question> questions = new ArrayList<>();
        for (Lead lead : leads) {
            if (!job.wants(wish)) {
                questions.add(Question.settled(
                        wish.word() + " " + lead.id(), Option.of(List.of(Aside.notAskedFor(lead, wish)))));
            } else if (lead.equals(leads.getFirst())) {
                questions.add(new Question(wish.word() + " " + lead.id(), ways.apply(lead)));
            } else {
                questions.add(Question.settled(
                        wish.word() + " " + lead.id(), Option.of(List.of(Aside.another(lead, leads.getFirst())))));
            }
        }
        return questions;
    }
}
