package org.loomproof.workshop.weigh;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.words.Phrase;

/**
 * Wishes for which every coupling that was tried breaks something: they are turned down, and the others are planned without.
 *
 * @param broken the plan in which they are served, and that breaks something
 * @param because what breaks first, wish by wish, in the order in which they were turned down
 */
record TurnedDown(Plan broken, Map<Wish, ClaimResult> because) {

    TurnedDown {
        because = Collections.unmodifiableMap(new LinkedHashMap<>(because));
    }

    /** No wish yet. */
    static TurnedDown nothing(Plan broken) {
        return new TurnedDown(broken, Map.of());
    }

    /** One wish more. */
    TurnedDown and(Wish wish, ClaimResult breaks) {
        Map<Wish, ClaimResult> more = new LinkedHashMap<>(because);
        more.put(wish, breaks);
        return new TurnedDown(broken, more);
    }

    /** The wishes that may be turned down besides: those that something is joined for. */
    List<Wish> listFurther(Order order) {
        Set<Wish> served = new TreeSet<>();
        for (Hookup hookup : broken.hookups()) {
            if (hookup instanceof Hookup.Connect connect
                    && order.wishes().contains(connect.serves())
                    && !because.containsKey(connect.serves())) {
                served.add(connect.serves());
            }
        }
        return List.copyOf(served);
    }

    /** The brief as if they had not been asked for. */
    Brief without(Brief brief) {
        Order order = brief.order();
        Set<Wish> left = new TreeSet<>(order.wishes());
        left.removeAll(because.keySet());
        return new Brief(
                brief.sheet(),
                brief.kit(),
                order.wanting(left, because.containsKey(Wish.WATCH_OPENINGS) ? List.of() : order.watched()));
    }

    /** A plan made without them, which says so and why: what would have served them lies insulated for that reason. */
    Plan tell(Plan without) {
        List<Hookup> hookups = without.hookups().stream()
                .map(hookup -> isAside(hookup) ? refusedFor(hookup).orElse(hookup) : hookup)
                .toList();
        List<Refusal> refusals = new ArrayList<>(without.refusals());
        because.forEach((wish, breaks) -> refusals.add(new Refusal(
                wish,
                Phrase.of("refuse.every-way-breaks", name(wish), breaks.statement()),
                Phrase.of("possible.every-way-breaks"))));
        return without.withHookups(hookups).withRefusals(refusals);
    }

    private Optional<Hookup> refusedFor(Hookup hookup) {
        return broken.findHookup(hookup.lead())
                .flatMap(TurnedDown::served)
                .filter(because::containsKey)
                .map(wish ->
                        new Hookup.CapAndKeep(hookup.lead(), Phrase.of("cap.refused", name(wish)), hookup.insteadOf()));
    }

    private static Optional<Wish> served(Hookup hookup) {
        return switch (hookup) {
            case Hookup.Connect connect -> Optional.of(connect.serves());
            case Hookup.Hold hold -> Optional.of(hold.serves());
            case Hookup.Trim trim -> Optional.empty();
            case Hookup.CapAndKeep cap -> Optional.empty();
        };
    }

    private static boolean isAside(Hookup hookup) {
        return served(hookup).isEmpty();
    }

    private static Phrase name(Wish wish) {
        return Phrase.of("term.wish." + wish.word());
    }
}
