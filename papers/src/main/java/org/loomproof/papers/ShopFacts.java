package org.loomproof.papers;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.record.Photo;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.shelf.Stock;

/**
 * What a shop brings to the papers of a job.
 *
 * @param prices its own; without them there is no quote
 * @param history how long its work took before
 * @param stock what lies on its shelf; without it the pick list says nothing of what to order
 * @param address where its pages are found; without it there are no QR codes
 * @param photos pictures of the work, for the record that the shop keeps
 * @param customer the language of what the customer reads
 */
public record ShopFacts(
        Optional<PriceList> prices,
        History history,
        Optional<Stock> stock,
        Optional<ShopAddress> address,
        List<Photo> photos,
        Locale customer) {

    public ShopFacts {
        photos = List.copyOf(photos);
    }

    /** Of a shop that says nothing of itself. */
    public static final ShopFacts NONE = ofPrices(Optional.empty());

    /** Of a shop that has prices at most. */
    public static ShopFacts ofPrices(Optional<PriceList> prices) {
        return new ShopFacts(prices, History.NONE, Optional.empty(), Optional.empty(), List.of(), Locale.ENGLISH);
    }
}
