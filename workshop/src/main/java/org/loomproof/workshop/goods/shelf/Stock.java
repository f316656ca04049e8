package org.loomproof.workshop.goods.shelf;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * What lies on the shelf.
 *
 * @param counts pieces or metres, by article; sizes as {@link Article#plain} writes them
 */
public record Stock(Map<Article, BigDecimal> counts) {

    public Stock {
        counts = Map.copyOf(counts);
    }

    /** How much of that very article there is; empty where the list does not say. */
    public Optional<BigDecimal> find(Article article) {
        return Optional.ofNullable(counts.get(new Article(article.kind(), Article.plain(article.size()))));
    }

    /** How much is missing of an item; zero when there is enough, empty where the list does not say. */
    public Optional<BigDecimal> missing(Item item) {
        return find(item.article()).map(there -> item.amount().subtract(there).max(BigDecimal.ZERO));
    }
}
