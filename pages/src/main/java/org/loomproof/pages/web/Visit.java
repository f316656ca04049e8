package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.Person;
import org.loomproof.workshop.words.Messages;

/** One request, with who asks and in which language; made by {@link Guard} before any page sees it. */
final class Visit {

    private static final String KEY = "visit";
    private static final int LONGEST_TEXT = 2_000_000;

    private final Context context;
    private final Views views;
    private final Shop shop;
    private final Optional<Person> person;
    private final String formMark;
    private final Messages messages;

    Visit(Context context, Views views, Shop shop, Optional<Person> person, String formMark, Messages messages) {
        this.context = context;
        this.views = views;
        this.shop = shop;
        this.person = person;
        this.formMark = formMark;
        this.messages = messages;
        context.attribute(KEY, this);
    }

    static Visit of(Context context) {
        Visit visit = context.attribute(KEY);
        if (visit == null) {
            throw new IllegalStateException("a request passed no guard");
        }
        return visit;
    }

    Messages messages() {
        return messages;
    }

    /** The signed-in person; every route but those for anyone has one. */
    Person person() {
        return person.orElseThrow(() -> new IllegalStateException("nobody is signed in"));
    }

    /** The signed-in person, where there is one. */
    Optional<Person> findPerson() {
        return person;
    }

    Author author() {
        return Author.of(person().id());
    }

    /** Goes with every form of whoever asks. */
    String formMark() {
        return formMark;
    }

    /** The open book; every route but those for anyone has one. */
    OpenBook book() {
        return shop.book().orElseThrow(() -> new IllegalStateException("the book is locked"));
    }

    /** A field of the form, without space around it; empty text where there is none. */
    String form(String name) {
        return raw(name).strip();
    }

    /** A field of the form, line ends as everywhere else. */
    String raw(String name) {
        String value = context.formParam(name);
        if (value == null || value.length() > LONGEST_TEXT) {
            return "";
        }
        return value.replace("\r\n", "\n");
    }

    /** The fields of the form with these names. */
    Map<String, String> form(Iterable<String> names) {
        Map<String, String> fields = new HashMap<>();
        names.forEach(name -> fields.put(name, form(name)));
        return fields;
    }

    /** A whole number of the form, or the other when there is none. */
    int number(String name, int otherwise) {
        String text = form(name);
        return text.matches("\\d{1,6}") ? Integer.parseInt(text) : otherwise;
    }

    String query(String name) {
        return Optional.ofNullable(context.queryParam(name)).orElse("").strip();
    }

    /** The card that the address names, if it can be a card's name. */
    Optional<CardId> card() {
        return CardId.in(context.pathParam("id"));
    }

    String part(String name) {
        return context.pathParam(name);
    }

    Context context() {
        return context;
    }

    void show(String template, Map<String, Object> parameters) {
        Map<String, Object> all = new HashMap<>(parameters);
        all.put("look", new Look(messages, person, formMark, context.path()));
        context.html(views.render(template, all));
    }

    void show(HttpStatus status, String template, Map<String, Object> parameters) {
        context.status(status);
        show(template, parameters);
    }

    /** After a form was taken: a page that can be looked at again without sending it twice. */
    void go(String path) {
        context.redirect(path, HttpStatus.SEE_OTHER);
    }

    /** A page that says what was refused and nothing else. */
    void refuse(HttpStatus status) {
        show(status, "refused", Map.of("code", status.getCode(), "number", ""));
    }

    /** A page that says that it was our fault, and the number under which the log has the rest. */
    void fault(String number) {
        HttpStatus status = HttpStatus.INTERNAL_SERVER_ERROR;
        show(status, "refused", Map.of("code", status.getCode(), "number", number));
    }

    static Locale language(Context context) {
        String wanted = Optional.ofNullable(context.header("Accept-Language")).orElse("en");
        try {
            return Locale.LanguageRange.parse(wanted).stream()
                    .map(range -> Locale.forLanguageTag(range.getRange()).getLanguage())
                    .filter(language -> language.equals("es") || language.equals("en"))
                    .findFirst()
                    .map(Locale::of)
                    .orElse(Locale.ENGLISH);
        } catch (IllegalArgumentException e) {
            return Locale.ENGLISH;
        }
    }
}
