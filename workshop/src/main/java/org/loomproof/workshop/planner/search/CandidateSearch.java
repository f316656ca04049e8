package org.loomproof.workshop.planner.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.explain.Terms;
import org.loomproof.workshop.planner.rule.Decision;
import org.loomproof.workshop.planner.rule.Job;
import org.loomproof.workshop.planner.rule.Option;
import org.loomproof.workshop.planner.rule.Question;
import org.loomproof.workshop.planner.rule.Searched;
import org.loomproof.workshop.words.Phrase;

/**
 * Combines one option of every question into a plan, those first that stay nearest to what the rules would take: by the sum
 * of the options' places, and among equals by the first question that departs. What goes beyond the bound is counted and said.
 */
public final class CandidateSearch {

    /** More plans than this are not put together. */
    public static final int MOST_CANDIDATES = 64;

    private CandidateSearch() {}

    /** All candidates up to the bound. */
    public static Candidates of(Job job, List<Question> questions, List<Phrase> cautions) {
        long thereAre = 1;
        int furthest = 0;
        for (Question question : questions) {
            thereAre =
                    Math.min(Long.MAX_VALUE / 64, thereAre * question.options().size());
            furthest += question.options().size() - 1;
        }
        Map<Plan, List<Option>> plans = new LinkedHashMap<>();
        for (int away = 0; away <= furthest && plans.size() < MOST_CANDIDATES; away++) {
            combine(questions, 0, away, new ArrayList<>(), answers -> {
                if (plans.size() < MOST_CANDIDATES) {
                    plans.putIfAbsent(Assembly.of(job, answers, unserved(job, answers), cautions), answers);
                }
            });
        }
        List<Phrase> bounds =
                thereAre > plans.size() ? List.of(Phrase.of("bound.candidates", plans.size(), thereAre)) : List.of();
        List<Searched> searches = questions.stream()
                .flatMap(question -> question.options().stream())
                .flatMap(option -> option.searches().stream())
                .distinct()
                .toList();
        return new Candidates(
                List.copyOf(plans.keySet()),
                thereAre,
                bounds,
                searches,
                new Shared(job, cautions, new HashMap<>(plans)));
    }

    /** Remembers of which answers each plan is made, the shared ones as well. */
    private record Shared(Job job, List<Phrase> cautions, Map<Plan, List<Option>> answers)
            implements Candidates.Sharer {
        @Override
        public List<Plan> share(Plan plan) {
            List<Plan> shared = new ArrayList<>();
            for (List<Option> fewer : Sharing.of(job.brief(), answers.getOrDefault(plan, List.of()))) {
                Plan made = Assembly.of(job, fewer, unserved(job, fewer), cautions);
                answers.putIfAbsent(made, fewer);
                shared.add(made);
            }
            return shared;
        }
    }

    private static void combine(
            List<Question> questions, int next, int away, List<Option> chosen, Consumer<List<Option>> found) {
        if (next == questions.size()) {
            if (away == 0) {
                found.accept(List.copyOf(chosen));
            }
            return;
        }
        List<Option> options = questions.get(next).options();
        for (int i = 0; i < options.size() && i <= away; i++) {
            chosen.add(options.get(i));
            combine(questions, next + 1, away - i, chosen, found);
            chosen.removeLast();
        }
    }

    /** A wish that nothing serves, nothing holds and nothing refuses: the kit has nothing for it. */
    private static List<Refusal> unserved(Job job, List<Option> answers) {
        Set<Wish> spokenFor = new LinkedHashSet<>();
        for (Option option : answers) {
            option.refusals().forEach(r -> spokenFor.add(r.wish()));
            for (Decision decision : option.decisions()) {
                switch (decision) {
                    case Decision.Join join -> {
                        spokenFor.add(join.serves());
                        if (join.serves() == Wish.SIREN && countLoads(join) > 1) {
                            spokenFor.add(Wish.SECOND_SOUNDER);
                        }
                        if (join.serves() == Wish.LOCKS && countLoads(join) > 0) {
                            spokenFor.add(Wish.LOCK_ACTUATORS);
                        }
                    }
                    case Decision.Leave(Hookup.Hold hold) -> spokenFor.add(hold.serves());
                    case Decision.Leave(Hookup.Trim trim) -> {}
                    case Decision.Leave(Hookup.CapAndKeep cap) -> {}
                    case Decision.Leave(Hookup.Connect connect) -> spokenFor.add(connect.serves());
                }
            }
        }
        return job.brief().order().wishes().stream()
                .sorted()
                .filter(wish -> wish != Wish.BASICS && !spokenFor.contains(wish))
                .map(wish -> new Refusal(
                        wish,
                        Phrase.of("refuse.nothing-for-it", Terms.wish(wish)),
                        Phrase.of("possible.nothing-for-it", Terms.wish(wish))))
                .toList();
    }

    private static long countLoads(Decision.Join join) {
        return join.draft().pieces().stream()
                .filter(Piece.Load.class::isInstance)
                .count();
    }
}
