package org.loomproof.pages.desk;

import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;
import org.loomproof.book.store.OpenBook;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.PriceListReader;
import org.loomproof.workshop.problem.Checked;

/** The shop's own price list, one text in the book. */
public final class Prices {

    private static final String TEXT = "prices";

    private Prices() {}

    /** The card with the list, when the shop has entered one. */
    public static Optional<Card> card(OpenBook book) {
        return book.cards().list(Listing.all(CardKind.PRICES, 1)).stream()
                .findFirst()
                .flatMap(line -> book.cards().find(line.id()));
    }

    /** The list as text. */
    public static Optional<String> text(OpenBook book) {
        return card(book).flatMap(card -> card.entries().find(TEXT));
    }

    /** The list, when there is one without a problem. */
    public static Optional<PriceList> list(OpenBook book) {
        return text(book).flatMap(text -> switch (PriceListReader.read(new SourceText("prices.csv", text))) {
            case Checked.Good<PriceList>(PriceList list) -> Optional.of(list);
            case Checked.Bad<PriceList> ignored -> Optional.empty();
        });
    }
}
