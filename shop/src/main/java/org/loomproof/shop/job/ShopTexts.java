package org.loomproof.shop.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.papers.ShopFacts;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.goods.price.HistoryReader;
import org.loomproof.workshop.goods.price.PriceListReader;
import org.loomproof.workshop.goods.shelf.StockReader;
import org.loomproof.workshop.problem.Problem;

/**
 * What a shop keeps as texts and the papers take from it.
 *
 * @param prices its price list; without it there is no quote
 * @param stock what lies on its shelf; without it the pick list says nothing of what to order
 * @param history how long its work took; without it the quote goes by what is usual
 */
public record ShopTexts(Optional<SourceText> prices, Optional<SourceText> stock, Optional<SourceText> history) {

    /** Of a shop that keeps none. */
    public static final ShopTexts NONE = new ShopTexts(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * What stands in them; every problem is added to those of other texts.
     *
     * @param customer the language of what the customer reads
     */
    ShopFacts read(List<Problem> problems, Locale customer) {
        return new ShopFacts(
                prices.flatMap(text -> PriceListReader.read(text).orTell(problems)),
                history.flatMap(text -> HistoryReader.read(text).orTell(problems))
                        .orElse(History.NONE),
                stock.flatMap(text -> StockReader.read(text).orTell(problems)),
                Optional.empty(),
                List.of(),
                customer);
    }
}
