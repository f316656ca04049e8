package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.CardId;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.Attempts;
import org.loomproof.pages.door.DoorLog;
import org.loomproof.pages.door.DoorLog.What;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.People.Added;
import org.loomproof.pages.door.Person;
import org.loomproof.pages.door.PhoneCode;
import org.loomproof.pages.door.Sessions;
import org.loomproof.papers.page.QrCode;

/**
 * How somebody signs in: their password, the second step, and where they are signed in. Whatever makes signing in easier or harder is
 * changed only by whoever knows the password there is, and then ends all their sessions but this one.
 */
final class OneselfPages {

    private final Guard guard;
    private final Sessions sessions;
    private final Attempts attempts;
    private final DoorLog log;
    private final Shop shop;

    OneselfPages(Guard guard, Sessions sessions, Attempts attempts, DoorLog log, Shop shop) {
        this.guard = guard;
        this.sessions = sessions;
        this.attempts = attempts;
        this.log = log;
        this.shop = shop;
    }

    void show(Context context) {
        show(Visit.of(context), HttpStatus.OK, "");
    }

    void changePassword(Context context) {
        Visit visit = Visit.of(context);
        Person person = visit.person();
        People people = new People(visit.book().cards());
        Optional<Refused> refused = refused(visit, people, "old");
        if (refused.isEmpty() && !visit.raw("password").equals(visit.raw("again"))) {
            refused = Optional.of(Refused.because("pages.password.not-the-same"));
        }
        if (refused.isEmpty()) {
            Added set = people.setPassword(person.id(), visit.raw("password"), visit.author());
            refused = Optional.of(set)
                    .filter(added -> added != Added.DONE)
                    .map(added -> Refused.because("pages.people." + added.word()));
        }
        if (refused.isPresent()) {
            show(visit, refused.orElseThrow());
            return;
        }
        log.tell(What.PASSWORD_CHANGED, Optional.of(person.id()), context.ip());
        sessions.endAll(person.id());
        guard.signIn(context, person);
        visit.go("/");
    }

    void endSession(Context context) {
        Visit visit = Visit.of(context);
        CardId person = visit.person().id();
        CardId.in(visit.form("device"))
                .ifPresentOrElse(device -> sessions.end(person, device), () -> guard.signOutElsewhere(context, person));
        visit.go("/password");
    }

    void askSecondStep(Context context) {
        askSecondStep(Visit.of(context), HttpStatus.OK, "", PhoneCode.newSecret());
    }

    /** From the page that showed the secret; taken only with a code that it gives, so that nobody locks themselves out. */
    void beginSecondStep(Context context) {
        Visit visit = Visit.of(context);
        CardId person = visit.person().id();
        People people = new People(visit.book().cards());
        String secret = visit.form("secret");
        if (!PhoneCode.isSecret(secret)) {
            visit.refuse(HttpStatus.UNPROCESSABLE_CONTENT);
            return;
        }
        Optional<Refused> refused = refused(visit, people, "password");
        if (refused.isEmpty()
                && !new PhoneCode(secret).fits(visit.form("code"), shop.clock().instant())) {
            refused = Optional.of(Refused.because("pages.second-step.wrong"));
        }
        if (refused.isPresent()) {
            Refused why = refused.orElseThrow();
            askSecondStep(visit, why.status(), why.problem(), secret);
            return;
        }
        String spare = people.beginSecondStep(person, secret, visit.author());
        log.tell(What.SECOND_STEP_BEGUN, Optional.of(person), context.ip());
        guard.signOutElsewhere(context, person);
        visit.show("second-step-begun", Map.of("spare", spare));
    }

    void endSecondStep(Context context) {
        Visit visit = Visit.of(context);
        CardId person = visit.person().id();
        People people = new People(visit.book().cards());
        Optional<Refused> refused = refused(visit, people, "password");
        if (refused.isPresent()) {
            show(visit, refused.orElseThrow());
            return;
        }
        people.endSecondStep(person, visit.author());
        log.tell(What.SECOND_STEP_ENDED, Optional.of(person), context.ip());
        guard.signOutElsewhere(context, person);
        visit.go("/password");
    }

    /** What is said to a form. */
    private record Refused(HttpStatus status, String problem) {
        static Refused because(String problem) {
            return new Refused(HttpStatus.UNPROCESSABLE_CONTENT, problem);
        }
    }

    /** Why a form with this field for the password there is is not taken; nothing when the password is right. */
    private Optional<Refused> refused(Visit visit, People people, String field) {
        CardId person = visit.person().id();
        String guessed = "password of " + person;
        if (!attempts.begin(guessed)) {
            return Optional.of(new Refused(HttpStatus.TOO_MANY_REQUESTS, "pages.sign-in.wait"));
        }
        if (!people.isPassword(person, visit.raw(field))) {
            log.tell(What.PASSWORD_REFUSED, Optional.of(person), visit.context().ip());
            return Optional.of(Refused.because("pages.password.wrong"));
        }
        attempts.succeeded(guessed);
        return Optional.empty();
    }

    private void show(Visit visit, Refused refused) {
        show(visit, refused.status(), refused.problem());
    }

    private void show(Visit visit, HttpStatus status, String problem) {
        CardId person = visit.person().id();
        visit.show(
                status,
                "oneself",
                Map.of(
                        "problem",
                        problem,
                        "sessions",
                        sessions.of(person),
                        "here",
                        guard.session(visit.context())
                                .map(session -> session.device().name()),
                        "secondStep",
                        new People(visit.book().cards()).hasSecondStep(person)));
    }

    private static void askSecondStep(Visit visit, HttpStatus status, String problem, String secret) {
        String signIn = new People(visit.book().cards()).signInOf(visit.person().id());
        visit.show(
                status,
                "second-step",
                Map.of(
                        "problem",
                        problem,
                        "secret",
                        secret,
                        "code",
                        List.of(QrCode.of(
                                PhoneCode.address(secret, signIn),
                                visit.messages().text("pages.second-step.picture")))));
    }
}
