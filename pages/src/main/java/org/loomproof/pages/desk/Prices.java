package org.loomproof.pages.desk;

import java.util.ArrayList;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;
import org.loomproof.book.store.OpenBook;
import org.loomproof.shop.job.ShopTexts;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.PriceListReader;

/** The shop's own price list, what lies on its shelf and how long its work took: three texts on one card of the book. */
public final class Prices {

    /** The entry with the price list, and the name under which its problems are told. */
    public static final String PRICES = "prices";

    /** The entry with what lies on the shelf. */
    public static final String STOCK = "stock";

    /** The entry with how long work took. */
    public static final String HISTORY = "history";

    private Prices() {}

    /** The card with the list, when the shop has entered one. */
    public static Optional<Card> card(OpenBook book) {
        return book.cards().list(Listing.all(CardKind.PRICES, 1)).stream()
                .findFirst()
                .flatMap(line -> book.cards().find(line.id()));
    }

    /** All three as the papers take them. */
    public static ShopTexts texts(OpenBook book) {
        Optional<Card> card = card(book);
        return new ShopTexts(text(card, PRICES), text(card, STOCK), new Timings(book).with(text(card, HISTORY)));
    }

    private static Optional<SourceText> text(Optional<Card> card, String name) {
        return card.flatMap(there -> there.entries().find(name))
                .filter(text -> !text.isBlank())
                .map(text -> new SourceText(name + ".csv", text));
    }

    /** The price list, when there is one without a problem. */
    public static Optional<PriceList> list(OpenBook book) {
        return texts(book).prices().flatMap(text -> PriceListReader.read(text).orTell(new ArrayList<>()));
    }
}
