package org.loomproof.workshop.goods.price;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.loomproof.workshop.goods.shelf.Article;

/**
 * A shop's own prices, without tax.
 *
 * @param currency of all of them
 * @param hour what an hour of work costs
 * @param taxPercent the tax on everything
 * @param validDays how long a quote stands
 * @param minutes how long work takes in this shop, where it says so
 * @param prices of articles, by kind and then by size as {@link Article#plain} writes it; the empty size stands for all others
 */
public record PriceList(
        CurrencyUnit currency,
        BigDecimal hour,
        BigDecimal taxPercent,
        int validDays,
        Map<Work, BigDecimal> minutes,
        Map<Article.Kind, Map<String, BigDecimal>> prices) {

    public PriceList {
        minutes = Map.copyOf(minutes);
        prices = Map.copyOf(prices);
    }

    /** What one piece or metre costs: the price of that very size, else that of its kind. */
    public Optional<BigDecimal> find(Article article) {
        Map<String, BigDecimal> sizes = prices.getOrDefault(article.kind(), Map.of());
        return Optional.ofNullable(sizes.get(Article.plain(article.size())))
                .or(() -> Optional.ofNullable(sizes.get("")));
    }
}
