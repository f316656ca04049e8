package org.loomproof.workshop.goods.change;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.Money;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.goods.price.Labour;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.Quote;
import org.loomproof.workshop.goods.price.Work;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.plan.Hookup;

/**
 * The difference between two plans for one car.
 *
 * @param leads those that are decided otherwise, in the order of the kit; a lead of one kit only stands with one side empty
 * @param articles how many more of each article, or fewer where negative; those that stay the same are not named
 * @param minutesBefore work of the old plan as a whole
 * @param minutesAfter work of the new plan as a whole
 * @param prices of both plans; empty when no price list was given, or when it lacks an article of either
 * @param undo what is to be undone where the old plan was already carried out
 */
public record PlanChange(
        List<LeadChange> leads,
        Map<Article, BigDecimal> articles,
        BigDecimal minutesBefore,
        BigDecimal minutesAfter,
        Optional<Prices> prices,
        List<Undo> undo) {

    /** A lead before and after. */
    public record LeadChange(LeadId lead, Optional<Hookup> before, Optional<Hookup> after) {}

    /** What the customer pays, before and after. */
    public record Prices(Money before, Money after) {}

    public PlanChange {
        leads = List.copyOf(leads);
        undo = List.copyOf(undo);
    }

    /** True when there is nothing to do. */
    public boolean isNothing() {
        return leads.isEmpty() && articles.isEmpty() && undo.isEmpty();
    }

    /** What changes from one plan to the other, at a shop's prices if there are any. */
    public static PlanChange between(PlanOf before, PlanOf after, Optional<PriceList> list) {
        Map<Work, BigDecimal> own = list.map(PriceList::minutes).orElse(Map.of());
        return new PlanChange(
                leads(before, after),
                articles(before, after),
                Labour.of(before.brief(), before.plan(), own).minutes(),
                Labour.of(after.brief(), after.plan(), own).minutes(),
                list.flatMap(prices -> prices(before, after, prices)),
                Undo.list(before.plan(), after.plan()));
    }

    private static Optional<Prices> prices(PlanOf before, PlanOf after, PriceList list) {
        Quote old = Quote.of(before.brief(), before.plan(), list);
        Quote next = Quote.of(after.brief(), after.plan(), list);
        return old.unpriced().isEmpty() && next.unpriced().isEmpty()
                ? Optional.of(new Prices(old.gross(), next.gross()))
                : Optional.empty();
    }

    private static List<LeadChange> leads(PlanOf before, PlanOf after) {
        Set<LeadId> all = new LinkedHashSet<>();
        before.plan().hookups().forEach(h -> all.add(h.lead()));
        after.plan().hookups().forEach(h -> all.add(h.lead()));
        List<LeadChange> changes = new ArrayList<>();
        for (LeadId lead : all) {
            Optional<Hookup> old = before.plan().findHookup(lead);
            Optional<Hookup> next = after.plan().findHookup(lead);
            Optional<List<String>> oldWay = old.map(h -> Trace.of(before.plan(), h));
            Optional<List<String>> nextWay = next.map(h -> Trace.of(after.plan(), h));
            if (!oldWay.equals(nextWay)) {
                changes.add(new LeadChange(lead, old, next));
            }
        }
        return changes;
    }

    private static Map<Article, BigDecimal> articles(PlanOf before, PlanOf after) {
        Map<Article, BigDecimal> more = new TreeMap<>();
        for (Item item : PickList.of(after.brief(), after.plan()).items()) {
            more.merge(item.article(), item.amount(), BigDecimal::add);
        }
        for (Item item : PickList.of(before.brief(), before.plan()).items()) {
            more.merge(item.article(), item.amount().negate(), BigDecimal::add);
        }
        more.values().removeIf(amount -> amount.signum() == 0);
        return more;
    }
}
