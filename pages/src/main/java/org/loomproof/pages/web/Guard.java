package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.loomproof.book.card.CardId;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.DoorLog;
import org.loomproof.pages.door.DoorLog.What;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Person;
import org.loomproof.pages.door.Requests;
import org.loomproof.pages.door.Right;
import org.loomproof.pages.door.Sessions;
import org.loomproof.pages.door.Sessions.Device;
import org.loomproof.pages.door.Sessions.Session;
import org.loomproof.workshop.words.Messages;

/**
 * What every request passes before a page sees it: it is meant for this server, comes from our own page where it changes something,
 * and whoever sends it has the right that the route names. Whatever is not plainly allowed is refused.
 */
final class Guard {

    /** Everything a page of ours may do: its own style, script and pictures, and sending forms to this server. */
    private static final String POLICY =
            "default-src 'none'; object-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy", POLICY,
            "X-Content-Type-Options", "nosniff",
            "Referrer-Policy", "same-origin",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin",
            "Permissions-Policy", "camera=(self), geolocation=(), microphone=()",
            "Cache-Control", "no-store");

    private static final long A_YEAR_SECONDS = 31_536_000;

    private final Shop shop;
    private final Sessions sessions;
    private final Views views;
    private final Listen listen;
    private final Requests requests;
    private final DoorLog log;
    private final Map<Locale, Messages> spoken = new ConcurrentHashMap<>();

    Guard(Shop shop, Sessions sessions, Views views, Listen listen, DoorLog log) {
        this.shop = shop;
        this.sessions = sessions;
        this.views = views;
        this.listen = listen;
        this.requests = new Requests(shop.clock());
        this.log = log;
    }

    /** Before anything else, a route or none. */
    void head(Context context) {
        HEADERS.forEach(context::header);
        if (listen.isSecure()) {
            context.header("Strict-Transport-Security", "max-age=" + A_YEAR_SECONDS + "; includeSubDomains");
        }
        Messages messages = spoken.computeIfAbsent(UnitsPages.of(context).with(Visit.language(context)), Messages::in);
        Optional<Session> session = session(context);
        Optional<Person> person =
                session.flatMap(s -> shop.book().flatMap(book -> new People(book.cards()).find(s.person())));
        String formMark = person.isPresent()
                ? session.map(Session::formMark).orElse("")
                : Optional.ofNullable(context.cookie(listen.formCookie()))
                        .filter(v -> !v.isBlank())
                        .orElseGet(() -> visitorsMark(context));
        Visit visit = new Visit(context, views, shop, person, formMark, messages);
        // Whoever is signed in is counted by name: a whole shop may stand behind one address.
        Requests.Answer answer = requests.count(person.map(p -> p.id().value()).orElse(context.ip()));
        if (answer == Requests.Answer.FIRST_TOO_MANY) {
            refuse(visit, HttpStatus.TOO_MANY_REQUESTS, What.TOO_MANY_REQUESTS);
        } else if (answer == Requests.Answer.TOO_MANY) {
            refuse(visit, HttpStatus.TOO_MANY_REQUESTS);
        } else if (!listen.isMeant(context.host())) {
            refuse(visit, HttpStatus.MISDIRECTED_REQUEST, What.FOREIGN_HOST);
        } else if (changesSomething(context)
                && (isUploadOfStranger(context, person) || !isFromOurPage(context, formMark))) {
            refuse(visit, HttpStatus.FORBIDDEN, What.FORGED);
        }
    }

    /** Before a route that was found. */
    void door(Context context) {
        Visit visit = Visit.of(context);
        Set<Right> asked = rights(context);
        if (asked.equals(Set.of(Right.ANYONE))) {
            return;
        }
        if (shop.book().isEmpty()) {
            go(visit, shop.isNew() ? "/begin" : "/unlock");
        } else if (visit.findPerson().isEmpty()) {
            go(visit, DoorPages.signInFor(context));
        } else if (asked.isEmpty()
                || !asked.stream().allMatch(right -> visit.person().role().has(right))) {
            refuse(visit, HttpStatus.FORBIDDEN, What.RIGHT_MISSING);
        } else if (visit.person().isTold() && !asked.equals(Set.of(Right.ONESELF))) {
            go(visit, "/password");
        }
    }

    /** Signs somebody in: a new session, never one that was there before. */
    void signIn(Context context, Person person) {
        cookie(context).ifPresent(sessions::end);
        Device device = new Device(CardId.fresh(), context.ip(), isHandheld(context));
        context.cookie(cookieOf(listen.sessionCookie(), sessions.begin(person.id(), device)));
        context.removeCookie(listen.formCookie());
    }

    /** Browsers of phones and tablets say so. */
    private static boolean isHandheld(Context context) {
        String agent = Optional.ofNullable(context.userAgent()).orElse("");
        return agent.contains("Mobi") || agent.contains("Android");
    }

    /** The session of whoever asks. */
    Optional<Session> session(Context context) {
        return cookie(context).flatMap(sessions::find);
    }

    /** Ends every session of somebody, but for the one they ask from. */
    void signOutElsewhere(Context context, CardId person) {
        Optional<CardId> here = session(context).map(session -> session.device().name());
        sessions.of(person).stream()
                .map(session -> session.device().name())
                .filter(device -> !here.equals(Optional.of(device)))
                .forEach(device -> sessions.end(person, device));
    }

    /** Signs somebody out. */
    void signOut(Context context) {
        cookie(context).ifPresent(sessions::end);
        context.removeCookie(listen.sessionCookie());
    }

    private String visitorsMark(Context context) {
        String mark = Sessions.chance();
        context.cookie(cookieOf(listen.formCookie(), mark));
        return mark;
    }

    private Cookie cookieOf(String name, String value) {
        return new Cookie(name, value, "/", -1, listen.isSecure(), true, null, SameSite.STRICT);
    }

    private Optional<String> cookie(Context context) {
        return Optional.ofNullable(context.cookie(listen.sessionCookie()));
    }

    private static Set<Right> rights(Context context) {
        return context.routeRoles().stream()
                .filter(Right.class::isInstance)
                .map(Right.class::cast)
                .collect(Collectors.toSet());
    }

    private static boolean changesSomething(Context context) {
        return !context.method().equals(HandlerType.GET) && !context.method().equals(HandlerType.HEAD);
    }

    /** Files are not even taken in from somebody who is not signed in. */
    private static boolean isUploadOfStranger(Context context, Optional<Person> person) {
        return person.isEmpty() && context.isMultipart();
    }

    /** Browsers say where a request comes from; and the form must hold the mark that only our page can have put there. */
    private boolean isFromOurPage(Context context, String formMark) {
        String site = context.header("Sec-Fetch-Site");
        String origin = context.header("Origin");
        boolean here = (site == null || site.equals("same-origin") || site.equals("none"))
                && (origin == null || listen.isOurs(origin));
        String sent = Optional.ofNullable(context.formParam("mark")).orElse("");
        return here
                && !formMark.isEmpty()
                && MessageDigest.isEqual(
                        sent.getBytes(StandardCharsets.UTF_8), formMark.getBytes(StandardCharsets.UTF_8));
    }

    private void refuse(Visit visit, HttpStatus status, What what) {
        log.tell(what, visit.findPerson().map(Person::id), visit.context().ip());
        refuse(visit, status);
    }

    private static void refuse(Visit visit, HttpStatus status) {
        visit.refuse(status);
        visit.context().skipRemainingHandlers();
    }

    private static void go(Visit visit, String path) {
        visit.go(path);
        visit.context().skipRemainingHandlers();
    }
}
