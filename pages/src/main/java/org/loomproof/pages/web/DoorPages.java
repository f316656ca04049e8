package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.PasswordHash;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.Refusal;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.Attempts;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Person;

/** Making the book, unlocking it, signing in and out. */
final class DoorPages {

    private final Shop shop;
    private final Guard guard;
    private final Attempts attempts;
    private final Stretching stretching;

    DoorPages(Shop shop, Guard guard, Attempts attempts, Stretching stretching) {
        this.shop = shop;
        this.guard = guard;
        this.attempts = attempts;
        this.stretching = stretching;
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
        } else if (visit.raw("password").length() < PasswordHash.FEWEST_CHARACTERS) {
            problem = "pages.people.password-too-short";
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
            visit.go("/sign-in");
        } else {
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
            visit.show("sign-in", Map.of("problem", "", "signIn", ""));
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
            tellAgain(visit, HttpStatus.TOO_MANY_REQUESTS, "pages.sign-in.wait", signIn);
            return;
        }
        Optional<Person> person = new People(visit.book().cards()).signIn(signIn, visit.raw("password"));
        if (person.isEmpty()) {
            tellAgain(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.sign-in.wrong", signIn);
            return;
        }
        attempts.succeeded(byName);
        attempts.succeeded(byPlace);
        guard.signIn(context, person.orElseThrow());
        visit.go("/");
    }

    void signOut(Context context) {
        guard.signOut(context);
        context.header("Clear-Site-Data", "\"cache\", \"storage\"");
        Visit.of(context).go("/sign-in");
    }

    private static void tellAgain(Visit visit, HttpStatus status, String problem, String signIn) {
        visit.show(status, "sign-in", Map.of("problem", problem, "signIn", signIn));
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
