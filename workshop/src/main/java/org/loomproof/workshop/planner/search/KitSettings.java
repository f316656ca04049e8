package org.loomproof.workshop.planner.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.rule.Searched;
import org.loomproof.workshop.words.Phrase;

/** The ways in which a kit can be set: every one may make another plan the best. */
public final class KitSettings {

    /** More ways than this are not planned for. */
    static final int MOST_WAYS = 16;

    private KitSettings() {}

    /** The candidates for every way a kit can be set, as it comes first, the best guesses of all ways before the second ones. */
    public static Candidates overAll(Kit kit, Function<List<Choice>, Candidates> planned) {
        List<List<Choice>> ways = listWays(kit);
        List<Candidates> each = ways.stream().limit(MOST_WAYS).map(planned).toList();
        int longest = each.stream().mapToInt(c -> c.plans().size()).max().orElse(0);
        Set<Plan> plans = new LinkedHashSet<>();
        for (int rank = 0; rank < longest; rank++) {
            for (int way = 0; way < each.size(); way++) {
                if (rank < each.get(way).plans().size()) {
                    Plan plan = each.get(way).plans().get(rank).withSettings(ways.get(way));
                    if (plans.size() < CandidateSearch.MOST_CANDIDATES && isSetForSomething(kit, plan)) {
                        plans.add(plan);
                    }
                }
            }
        }
        long thereAre = each.stream().mapToLong(Candidates::thereAre).sum();
        Set<Phrase> bounds = new LinkedHashSet<>();
        each.forEach(candidates -> bounds.addAll(candidates.bounds()));
        if (ways.size() > MOST_WAYS) {
            bounds.add(Phrase.of("bound.kit-settings", MOST_WAYS, ways.size()));
        }
        Set<Searched> searches = new LinkedHashSet<>();
        each.forEach(candidates -> searches.addAll(candidates.searches()));
        return new Candidates(
                List.copyOf(plans),
                thereAre,
                List.copyOf(bounds),
                List.copyOf(searches),
                plan -> share(ways, each, plan));
    }

    private static List<Plan> share(List<List<Choice>> ways, List<Candidates> each, Plan plan) {
        return each.get(ways.indexOf(plan.settings())).sharing().share(plan.withSettings(List.of())).stream()
                .map(shared -> shared.withSettings(plan.settings()))
                .toList();
    }

    /** Every combination of settings that changes a lead; fewer changes come first. */
    private static List<List<Choice>> listWays(Kit kit) {
        List<List<Choice>> ways = new ArrayList<>(List.of(List.of()));
        for (KitOption option : kit.options()) {
            List<Choice> others = option.settings().stream()
                    .filter(setting -> !setting.ports().isEmpty())
                    .map(setting -> new Choice(option.name(), setting.name()))
                    .toList();
            for (List<Choice> way : List.copyOf(ways)) {
                for (Choice other : others) {
                    List<Choice> longer = new ArrayList<>(way);
                    longer.add(other);
                    ways.add(longer);
                }
            }
        }
        ways.sort((one, other) -> Integer.compare(one.size(), other.size()));
        return ways;
    }

    /** Nothing is set otherwise for leads that lie insulated. */
    private static boolean isSetForSomething(Kit kit, Plan plan) {
        return plan.settings().stream()
                .allMatch(choice -> plan.hookups().stream()
                        .filter(Hookup.Connect.class::isInstance)
                        .anyMatch(h -> kit.standing(plan.settings(), h.lead()).contains(choice)));
    }
}
