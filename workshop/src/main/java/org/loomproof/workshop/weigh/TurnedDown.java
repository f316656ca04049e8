package org.loomproof.workshop.weigh;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.words.Phrase;

/** A wish for which every coupling that was tried breaks something: it is turned down, and the others are planned without it. */
final class TurnedDown {

    private TurnedDown() {}

    /** The brief without some wishes. */
    static Brief without(Brief brief, Set<Wish> wishes) {
        Order order = brief.order();
        Set<Wish> left = EnumSet.noneOf(Wish.class);
        order.wishes().stream().filter(w -> !wishes.contains(w)).forEach(left::add);
        return new Brief(
                brief.sheet(),
                brief.kit(),
                new Order(
                        order.job(),
                        left,
                        wishes.contains(Wish.WATCH_OPENINGS) ? List.of() : order.watched(),
                        order.overridePlace(),
                        order.ruleSet(),
                        order.longestUnusedDays(),
                        order.shop(),
                        order.stock()));
    }

    /** A plan made without a wish, which says so and why: what would have served the wish lies insulated for that reason. */
    static Plan tell(Plan without, Plan broken, Wish wish, ClaimResult because) {
        Phrase name = Phrase.of("term.wish." + wish.word());
        List<Hookup> hookups = without.hookups().stream()
                .map(hookup -> servedBy(broken, hookup, wish) && isAside(hookup)
                        ? new Hookup.CapAndKeep(hookup.lead(), Phrase.of("cap.refused", name), hookup.insteadOf())
                        : hookup)
                .toList();
        List<Refusal> refusals = new ArrayList<>(without.refusals());
        refusals.add(new Refusal(
                wish,
                Phrase.of("refuse.every-way-breaks", name, because.statement()),
                Phrase.of("possible.every-way-breaks")));
        return without.withHookups(hookups).withRefusals(refusals);
    }

    private static boolean servedBy(Plan plan, Hookup hookup, Wish wish) {
        return plan.findHookup(hookup.lead())
                .filter(h -> switch (h) {
                    case Hookup.Connect connect -> connect.serves() == wish;
                    case Hookup.Hold hold -> hold.serves() == wish;
                    case Hookup.Trim trim -> false;
                    case Hookup.CapAndKeep cap -> false;
                })
                .isPresent();
    }

    private static boolean isAside(Hookup hookup) {
        return switch (hookup) {
            case Hookup.Connect connect -> false;
            case Hookup.Hold hold -> false;
            case Hookup.Trim trim -> true;
            case Hookup.CapAndKeep cap -> true;
        };
    }
}
