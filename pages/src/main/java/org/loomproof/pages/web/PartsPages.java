package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Saved;
import org.loomproof.pages.desk.Prices;
import org.loomproof.pages.desk.Shared;
import org.loomproof.pages.desk.Shelf;
import org.loomproof.pages.desk.Texts;

/** Parts and prices: what lies on the shelf, what jobs take, what is to be ordered; and the three texts it comes from. */
final class PartsPages {

    private PartsPages() {}

    static void show(Context context) {
        Visit visit = Visit.of(context);
        Optional<Card> card = Prices.card(visit.book());
        Map<String, String> fields =
                card.<Map<String, String>>map(there -> there.entries().values()).orElse(Map.of());
        show(visit, HttpStatus.OK, card, fields, List.of(), false);
    }

    /** Kept only when every text can be used, and when nobody else changed them meanwhile. */
    static void save(Context context) {
        Visit visit = Visit.of(context);
        Optional<Card> card = Prices.card(visit.book());
        Map<String, String> fields = new HashMap<>(Map.of(Shared.TITLE, Prices.PRICES));
        List<String> problems = new ArrayList<>();
        for (String name : Texts.OF_THE_SHOP) {
            String text = visit.raw(name);
            fields.put(name, text);
            if (!text.isBlank()) {
                problems.addAll(new Texts(visit.messages()).problems(name, text, Optional.empty()));
            }
        }
        if (!problems.isEmpty()) {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, card, fields, problems, false);
            return;
        }
        if (card.isEmpty()) {
            visit.book().cards().add(CardKind.PRICES, visit.author(), "prices.changed", fields);
            visit.go("/prices");
            return;
        }
        int seen = visit.number("seen", 0);
        switch (visit.book().cards().change(card.orElseThrow().id(), seen, visit.author(), "prices.changed", fields)) {
            case Saved.Done ignored -> visit.go("/prices");
            case Saved.Gone ignored -> visit.refuse(HttpStatus.NOT_FOUND);
            case Saved.Overtaken(Card now) ->
                show(visit, HttpStatus.CONFLICT, Optional.of(now), fields, List.of(), true);
        }
    }

    private static void show(
            Visit visit,
            HttpStatus status,
            Optional<Card> card,
            Map<String, String> fields,
            List<String> problems,
            boolean overtaken) {
        visit.show(
                status,
                "parts",
                Map.of(
                        "rows", new Shelf(visit.book()).rows(),
                        "seen", card.map(Card::version).orElse(0),
                        "fields", fields,
                        "problems", problems,
                        "overtaken", overtaken));
    }
}
