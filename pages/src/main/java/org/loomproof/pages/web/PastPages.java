package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.pages.desk.Past;
import org.loomproof.pages.door.People;

/** Who did what when, of a job, a vehicle sheet or a kit; and each as it stood after any of its changes. */
final class PastPages {

    private static final Set<CardKind> KINDS = Set.of(CardKind.JOB, CardKind.SHEET, CardKind.KIT);

    private PastPages() {}

    static void all(Context context) {
        Visit visit = Visit.of(context);
        card(visit)
                .ifPresent(card -> visit.show(
                        "past",
                        Map.of(
                                "card",
                                card,
                                "lines",
                                Past.of(
                                        visit.book().cards().events(card.id()),
                                        new People(visit.book().cards())))));
    }

    /** As it was after its first so many changes; nothing can be changed there. */
    static void one(Context context) {
        Visit visit = Visit.of(context);
        int version = visit.part("version").matches("\\d{1,6}") ? Integer.parseInt(visit.part("version")) : 0;
        card(visit).ifPresent(now -> {
            Optional<Card> then = version < 1 || version > now.version()
                    ? Optional.empty()
                    : visit.book().cards().at(now.id(), version);
            if (then.isEmpty()) {
                visit.refuse(HttpStatus.NOT_FOUND);
            } else {
                visit.show(
                        "state", Map.of("card", now, "version", version, "entries", Past.written(then.orElseThrow())));
            }
        });
    }

    private static Optional<Card> card(Visit visit) {
        Optional<Card> card =
                visit.card().flatMap(id -> visit.book().cards().find(id)).filter(found -> KINDS.contains(found.kind()));
        if (card.isEmpty()) {
            visit.refuse(HttpStatus.NOT_FOUND);
        }
        return card;
    }
}
