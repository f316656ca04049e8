package org.loomproof.workshop.goods.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.plan.Plan;

/**
 * What one plan costs at one price list. Every line is rounded, half up, to what the currency has coins for, and the sums are
 * sums of the lines as printed; tax is rounded once, on their sum.
 *
 * @param prices the list it was made with
 * @param goods one line an item of the pick list
 * @param work one line a kind of work
 */
public record Quote(PriceList prices, List<GoodsLine> goods, List<WorkLine> work) {

    private static final BigDecimal MINUTES_AN_HOUR = BigDecimal.valueOf(60);
    private static final int PERCENT_DECIMALS = 2;

    public Quote {
        goods = List.copyOf(goods);
        work = List.copyOf(work);
    }

    /** An item and what it costs; empty when the price list does not know it. */
    public record GoodsLine(Item item, Optional<Money> costs) {}

    /** A kind of work and what it costs. */
    public record WorkLine(Labour.Line line, Money costs) {}

    /** The quote for a plan. What came in the kit's box costs what the kit costs. */
    public static Quote of(Brief brief, Plan plan, PriceList prices) {
        return of(brief, plan, prices, History.NONE);
    }

    /** The quote for a plan by a shop that timed its work before. */
    public static Quote of(Brief brief, Plan plan, PriceList prices, History history) {
        List<GoodsLine> goods = PickList.of(brief, plan).items().stream()
                .filter(item -> isCharged(item))
                .map(item -> new GoodsLine(item, costs(item, prices)))
                .toList();
        List<WorkLine> work = Labour.of(brief, plan, prices.minutes(), history).lines().stream()
                .map(line -> new WorkLine(line, costs(line, prices)))
                .toList();
        return new Quote(prices, goods, work);
    }

    private static boolean isCharged(Item item) {
        return switch (item.from()) {
            case SHELF -> true;
            case BOX -> item.article().kind() == Article.Kind.KIT;
        };
    }

    private static Optional<Money> costs(Item item, PriceList prices) {
        return prices.find(item.article()).map(each -> rounded(prices.currency(), each.multiply(item.amount())));
    }

    private static Money costs(Labour.Line line, PriceList prices) {
        int digits = prices.currency().getDecimalPlaces();
        BigDecimal exact = prices.hour().multiply(line.minutes()).divide(MINUTES_AN_HOUR, digits, RoundingMode.HALF_UP);
        return Money.of(prices.currency(), exact);
    }

    private static Money rounded(CurrencyUnit currency, BigDecimal exact) {
        return Money.of(currency, exact, RoundingMode.HALF_UP);
    }

    /** Items of which the price list says nothing; while there are any, the sums are too small and must not be promised. */
    public List<Item> unpriced() {
        return goods.stream()
                .filter(line -> line.costs().isEmpty())
                .map(GoodsLine::item)
                .toList();
    }

    /** All goods that have a price. */
    public Money goodsSum() {
        return sum(goods.stream().flatMap(line -> line.costs().stream()).toList());
    }

    /** All work. */
    public Money workSum() {
        return sum(work.stream().map(WorkLine::costs).toList());
    }

    /** Goods and work. */
    public Money net() {
        return goodsSum().plus(workSum());
    }

    /** The tax on that. */
    public Money tax() {
        return rounded(
                prices.currency(),
                net().getAmount().multiply(prices.taxPercent()).movePointLeft(PERCENT_DECIMALS));
    }

    /** What the customer pays. */
    public Money gross() {
        return net().plus(tax());
    }

    private Money sum(List<Money> lines) {
        return lines.stream().reduce(Money.zero(prices.currency()), Money::plus);
    }
}
