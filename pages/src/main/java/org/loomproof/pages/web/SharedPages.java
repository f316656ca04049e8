package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Saved;
import org.loomproof.pages.desk.Confirmations;
import org.loomproof.pages.desk.Shared;
import org.loomproof.pages.desk.Texts;
import org.loomproof.papers.page.Wording;

/** Vehicle sheets or kits that all jobs share: the list, and one with its texts. */
final class SharedPages {

    private final CardKind kind;

    SharedPages(CardKind kind) {
        this.kind = kind;
    }

    /** Where those of a kind are found. */
    static String path(CardKind kind) {
        return "/" + kind.word() + "s";
    }

    void list(Context context) {
        Visit visit = Visit.of(context);
        visit.show("shared-list", Map.of("kind", kind.word(), "cards", new Shared(visit.book()).all(kind)));
    }

    void begin(Context context) {
        show(Visit.of(context), HttpStatus.OK, Optional.empty(), Map.of(), List.of(), false);
    }

    void show(Context context) {
        withCard(
                context,
                (visit, card) -> show(
                        visit, HttpStatus.OK, Optional.of(card), card.entries().values(), List.of(), false));
    }

    void add(Context context) {
        Visit visit = Visit.of(context);
        Map<String, String> fields = fields(visit);
        List<String> problems = problems(visit, fields);
        if (problems.isEmpty()) {
            Card card = visit.book().cards().add(kind, visit.author(), kind.word() + ".changed", fields);
            visit.go(path(kind) + "/" + card.id());
        } else {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, Optional.empty(), fields, problems, false);
        }
    }

    /** Kept only when it can be used, and when nobody else changed it meanwhile. */
    void save(Context context) {
        withCard(context, (visit, card) -> {
            Map<String, String> fields = fields(visit);
            List<String> problems = problems(visit, fields);
            if (!problems.isEmpty()) {
                show(visit, HttpStatus.UNPROCESSABLE_CONTENT, Optional.of(card), fields, problems, false);
                return;
            }
            switch (visit.book()
                    .cards()
                    .change(card.id(), visit.number("seen", 0), visit.author(), kind.word() + ".changed", fields)) {
                case Saved.Done ignored -> visit.go(path(kind) + "/" + card.id());
                case Saved.Gone ignored -> visit.refuse(HttpStatus.NOT_FOUND);
                case Saved.Overtaken(Card now) ->
                    show(visit, HttpStatus.CONFLICT, Optional.of(now), fields, List.of(), true);
            }
        });
    }

    private Map<String, String> fields(Visit visit) {
        Map<String, String> texts = new HashMap<>();
        Shared.texts(kind).forEach(name -> texts.put(name, visit.raw(name)));
        return Shared.entries(kind, visit.form(Shared.TITLE), texts);
    }

    private List<String> problems(Visit visit, Map<String, String> fields) {
        Texts texts = new Texts(visit.messages());
        List<String> problems = new ArrayList<>();
        for (String name : Shared.texts(kind)) {
            String text = fields.getOrDefault(name, "");
            if (name.equals(kind.word()) || !text.isBlank()) {
                problems.addAll(texts.problems(name, text, Optional.empty()));
            }
        }
        return problems;
    }

    private void show(
            Visit visit,
            HttpStatus status,
            Optional<Card> card,
            Map<String, String> fields,
            List<String> problems,
            boolean overtaken) {
        visit.show(
                status,
                "shared",
                Map.of(
                        "met",
                        card.filter(one -> kind == CardKind.SHEET)
                                .map(sheet -> new Confirmations(visit.book(), visit.messages()).of(sheet))
                                .orElse(List.of()),
                        "words",
                        new Wording(visit.messages()),
                        "kind",
                        kind.word(),
                        "texts",
                        Shared.texts(kind),
                        "card",
                        card,
                        "fields",
                        fields,
                        "problems",
                        problems,
                        "overtaken",
                        overtaken));
    }

    /** What is done with the card of the address. */
    private interface WithCard {
        void handle(Visit visit, Card card);
    }

    private void withCard(Context context, WithCard work) {
        Visit visit = Visit.of(context);
        visit.card()
                .flatMap(id -> visit.book().cards().find(id))
                .filter(card -> card.kind() == kind)
                .ifPresentOrElse(card -> work.handle(visit, card), () -> visit.refuse(HttpStatus.NOT_FOUND));
    }

    /** A job takes a copy of a shared text. */
    static void taken(Context context) {
        Visit visit = Visit.of(context);
        String text = visit.part("text");
        Optional<Card> shared = CardId.in(visit.form("shared"))
                .flatMap(id -> visit.book().cards().find(id))
                .filter(card -> Shared.kind(text).filter(k -> k == card.kind()).isPresent());
        JobPages.job(visit)
                .ifPresent(job -> shared.ifPresentOrElse(
                        card -> JobPages.save(visit, "text-again", job, "job." + text, Shared.taken(card)),
                        () -> visit.refuse(HttpStatus.NOT_FOUND)));
    }

    /** A job gives its text to all. */
    static void given(Context context) {
        Visit visit = Visit.of(context);
        String text = visit.part("text");
        JobPages.job(visit).ifPresent(job -> {
            if (Shared.kind(text).isEmpty() || job.get(text).isBlank()) {
                visit.refuse(HttpStatus.NOT_FOUND);
                return;
            }
            String title = visit.form(Shared.TITLE);
            new Shared(visit.book())
                    .give(
                            job,
                            text,
                            title.isEmpty() ? text : title,
                            visit.form("as").equals("new"),
                            visit.author())
                    .ifPresentOrElse(
                            changes -> JobPages.save(visit, "text-again", job, "job." + text + "-given", changes),
                            () -> visit.show(
                                    HttpStatus.CONFLICT, "again", Map.of("job", job, "path", "/texts/" + text)));
        });
    }
}
