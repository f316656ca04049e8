package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.net.InetAddress;
import java.net.URLEncoder;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.Refusal;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.Attempts;
import org.loomproof.pages.door.DoorLog;
import org.loomproof.pages.door.DoorLog.What;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Person;
import org.loomproof.pages.door.UsedCodes;

/** Making the book, unlocking it, signing in and out. */
final class DoorPages {

    /** The field with the page that somebody wanted who had to sign in first. */
    private static final String WANTED = "wanted";

    private static final Pattern STEP = Pattern.compile("/jobs/[A-Za-z0-9-]+/bay/[A-Za-z0-9%@._~-]+");

    private final Shop shop;
    private final Guard guard;
    private final Attempts attempts;
    private final Stretching stretching;
    private final DoorLog log;
    private final UsedCodes codes;

    DoorPages(Shop shop, Guard guard, Attempts attempts, Stretching stretching, DoorLog log) {
        this.shop = shop;
        this.guard = guard;
        this.attempts = attempts;
        this.stretching = stretching;
        this.log = log;
        this.codes = new UsedCodes(shop.clock());
    }

    void begin(Context context) {
        Visit visit = Visit.of(context);
        if (!shop.isNew()) {
            visit.go("/");
        } else if (isAtThisMachine(context)) {
            visit.show("begin", Map.of("problem", ""));
        } else {
            visit.refuse(HttpStatus.FORBIDDEN);
        }
    }

    void make(Context context) {
        Visit visit = Visit.of(context);
        if (!shop.isNew()) {
            visit.go("/");
            return;
        }
        if (!isAtThisMachine(context)) {
            visit.refuse(HttpStatus.FORBIDDEN);
            return;
        }
        String passphrase = visit.raw("passphrase");
        String problem = "";
        if (!passphrase.equals(visit.raw("again"))) {
            problem = "pages.begin.not-the-same";
        } else if (visit.form("understood").isEmpty()) {
            problem = "pages.begin.not-understood";
        } else if (visit.form("name").isEmpty() || visit.form("sign-in").isEmpty()) {
            problem = "pages.people.name-missing";
        } else {
            problem = People.judged(visit.raw("password"), visit.form("name"), visit.form("sign-in"))
                    .map(added -> "pages.people." + added.word())
                    .orElse("");
        }
        if (problem.isEmpty()) {
            problem = shop.make(
                            Passphrase.of(passphrase),
                            stretching,
                            visit.form("name"),
                            visit.form("sign-in"),
                            visit.raw("password"))
                    .map(refusal -> "pages.unlock." + refusal.word())
                    .orElse("");
        }
        if (problem.isEmpty()) {
            visit.go("/sign-in");
        } else {
            visit.show(HttpStatus.UNPROCESSABLE_CONTENT, "begin", Map.of("problem", problem));
        }
    }

    void locked(Context context) {
        Visit visit = Visit.of(context);
        if (shop.book().isPresent()) {
            visit.go("/");
        } else {
            visit.show("unlock", Map.of("problem", ""));
        }
    }

    void unlock(Context context) {
        Visit visit = Visit.of(context);
        String what = "unlock";
        if (!attempts.begin(what)) {
            visit.show(HttpStatus.TOO_MANY_REQUESTS, "unlock", Map.of("problem", "pages.sign-in.wait"));
            return;
        }
        Optional<Refusal> refusal = shop.unlock(Passphrase.of(visit.raw("passphrase")));
        if (refusal.isEmpty()) {
            attempts.succeeded(what);
            log.tell(What.UNLOCKED, Optional.empty(), context.ip());
            visit.go("/sign-in");
        } else {
            log.tell(What.UNLOCK_REFUSED, Optional.empty(), context.ip());
            visit.show(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    "unlock",
                    Map.of("problem", "pages.unlock." + refusal.orElseThrow().word()));
        }
    }

    void askWho(Context context) {
        Visit visit = Visit.of(context);
        if (shop.book().isEmpty()) {
            visit.go(shop.isNew() ? "/begin" : "/unlock");
        } else {
            showSignIn(visit, HttpStatus.OK, "", "");
        }
    }

    void signIn(Context context) {
        Visit visit = Visit.of(context);
        if (shop.book().isEmpty()) {
            visit.go("/unlock");
            return;
        }
        String signIn = visit.form("sign-in");
        // Guesses are counted by where they come from, so that many names do not help, and by name there. Counted by
        // name
        // alone, anybody could keep a person from signing in.
        String byPlace = "place " + context.ip();
        String byName = byPlace + " name " + signIn.toLowerCase(Locale.ROOT);
        boolean mayByName = attempts.begin(byName);
        boolean mayByPlace = attempts.begin(byPlace);
        if (!mayByName || !mayByPlace) {
            log.tell(What.SIGN_IN_MUST_WAIT, Optional.empty(), context.ip());
            showSignIn(visit, HttpStatus.TOO_MANY_REQUESTS, "pages.sign-in.wait", signIn);
            return;
        }
        Optional<Person> person =
                new People(visit.book().cards()).signIn(signIn, visit.raw("password"), visit.form("code"), codes);
        if (person.isEmpty()) {
            log.tell(What.SIGN_IN_REFUSED, Optional.empty(), context.ip());
            showSignIn(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.sign-in.wrong", signIn);
            return;
        }
        attempts.succeeded(byName);
        attempts.succeeded(byPlace);
        log.tell(What.SIGNED_IN, person.map(Person::id), context.ip());
        guard.signIn(context, person.orElseThrow());
        visit.go(wanted(visit.form(WANTED)).orElse("/"));
    }

    void signOut(Context context) {
        Visit visit = Visit.of(context);
        log.tell(What.SIGNED_OUT, visit.findPerson().map(Person::id), context.ip());
        guard.signOut(context);
        context.header("Clear-Site-Data", "\"cache\", \"storage\"");
        visit.go("/sign-in");
    }

    private static void showSignIn(Visit visit, HttpStatus status, String problem, String signIn) {
        String wanted =
                wanted(visit.query(WANTED)).or(() -> wanted(visit.form(WANTED))).orElse("");
        boolean codes = new People(visit.book().cards()).someHaveSecondStep();
        visit.show(status, "sign-in", Map.of("problem", problem, "signIn", signIn, "wanted", wanted, "codes", codes));
    }

    /** Where somebody signs in who is not yet; a code of a bay sheet still opens its step afterwards. */
    static String signInFor(Context context) {
        return context.method().equals(HandlerType.GET)
                ? wanted(context.path())
                        .map(path -> "/sign-in?" + WANTED + "=" + URLEncoder.encode(path, StandardCharsets.UTF_8))
                        .orElse("/sign-in")
                : "/sign-in";
    }

    /** The step of a job that a path names. Nobody is led anywhere else, least of all to another server. */
    private static Optional<String> wanted(String path) {
        return Optional.of(path).filter(name -> STEP.matcher(name).matches());
    }

    /** A book is made by somebody at the machine, not by whoever on the network comes first. */
    private static boolean isAtThisMachine(Context context) {
        try {
            return InetAddress.getByName(context.ip()).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
