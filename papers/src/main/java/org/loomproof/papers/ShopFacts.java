package org.loomproof.papers;

import java.util.Optional;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.shelf.Stock;

/**
 * What a shop brings to the papers of any job.
 *
 * @param prices its own; without them there is no quote
 * @param history how long its work took before
 * @param stock what lies on its shelf; without it the pick list says nothing of what to order
 * @param address where its pages are found; without it there are no QR codes
 */
public record ShopFacts(
        Optional<PriceList> prices, History history, Optional<Stock> stock, Optional<ShopAddress> address) {

    /** Of a shop that says nothing of itself. */
    public static final ShopFacts NONE =
            new ShopFacts(Optional.empty(), History.NONE, Optional.empty(), Optional.empty());
}
