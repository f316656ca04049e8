package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.pages.desk.Background;
import org.loomproof.pages.desk.Fit;
import org.loomproof.pages.desk.NightlyProof;
import org.loomproof.pages.desk.Shop;

/** What the nightly proof found of every vehicle sheet with every kit. */
final class FitPages {

    private final Shop shop;

    FitPages(Shop shop) {
        this.shop = shop;
    }

    void all(Context context) {
        Visit visit = Visit.of(context);
        List<Fit> fits = new NightlyProof(visit.book(), visit.messages()).all();
        visit.show(
                "fits",
                Map.of(
                        "fits", fits,
                        "due", fits.stream().filter(Fit::isDue).count(),
                        "waiting",
                                fits.stream()
                                        .filter(Fit::isDue)
                                        .filter(background()::isUnderWay)
                                        .count()));
    }

    /** One of them, claim by claim. */
    void one(Context context) {
        Visit visit = Visit.of(context);
        Optional<Card> card =
                visit.card().flatMap(id -> visit.book().cards().find(id)).filter(found -> found.kind() == CardKind.FIT);
        Optional<Fit> fit = new NightlyProof(visit.book(), visit.messages())
                .all().stream()
                        .filter(one -> one.last().isPresent()
                                && one.last()
                                        .orElseThrow()
                                        .id()
                                        .equals(card.map(Card::id).orElse(null)))
                        .findFirst();
        if (card.isEmpty() || fit.isEmpty()) {
            visit.refuse(HttpStatus.NOT_FOUND);
            return;
        }
        visit.show("fit", Map.of("fit", fit.orElseThrow(), "verdicts", NightlyProof.verdicts(card.orElseThrow())));
    }

    /** Has what is due proven now, and not only at night. */
    void begin(Context context) {
        Visit visit = Visit.of(context);
        background().proveDue(visit.author(), visit.messages().locale());
        visit.go("/fits");
    }

    private Background background() {
        return shop.background().orElseThrow(() -> new IllegalStateException("the book is locked"));
    }
}
