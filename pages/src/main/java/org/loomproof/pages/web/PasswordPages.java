package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import org.loomproof.pages.door.Attempts;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.People.Added;
import org.loomproof.pages.door.Person;
import org.loomproof.pages.door.Sessions;

/** Somebody's own password: changed by whoever knows the one there is, which then ends all their sessions but this one. */
final class PasswordPages {

    private final Guard guard;
    private final Sessions sessions;
    private final Attempts attempts;

    PasswordPages(Guard guard, Sessions sessions, Attempts attempts) {
        this.guard = guard;
        this.sessions = sessions;
        this.attempts = attempts;
    }

    void show(Context context) {
        show(Visit.of(context), HttpStatus.OK, "");
    }

    void change(Context context) {
        Visit visit = Visit.of(context);
        Person person = visit.person();
        People people = new People(visit.book().cards());
        String guessed = "password of " + person.id();
        if (!attempts.begin(guessed)) {
            show(visit, HttpStatus.TOO_MANY_REQUESTS, "pages.sign-in.wait");
            return;
        }
        if (!people.isPassword(person.id(), visit.raw("old"))) {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.password.wrong");
            return;
        }
        attempts.succeeded(guessed);
        if (!visit.raw("password").equals(visit.raw("again"))) {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.password.not-the-same");
            return;
        }
        Added set = people.setPassword(person.id(), visit.raw("password"), visit.author());
        if (set != Added.DONE) {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.people." + set.word());
            return;
        }
        sessions.endAll(person.id());
        guard.signIn(context, person);
        visit.go("/");
    }

    private static void show(Visit visit, HttpStatus status, String problem) {
        visit.show(status, "password", Map.of("problem", problem));
    }
}
