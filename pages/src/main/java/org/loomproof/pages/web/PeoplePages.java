package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.CardId;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Role;
import org.loomproof.pages.door.Sessions;

/** Who works here. */
final class PeoplePages {

    private final Sessions sessions;

    PeoplePages(Sessions sessions) {
        this.sessions = sessions;
    }

    void list(Context context) {
        show(Visit.of(context), HttpStatus.OK, "");
    }

    void add(Context context) {
        Visit visit = Visit.of(context);
        Optional<Role> role = Role.in(visit.form("role"));
        if (role.isEmpty()) {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.people.role-missing");
            return;
        }
        People.Added added = new People(visit.book().cards())
                .add(
                        visit.author(),
                        visit.form("name"),
                        visit.form("sign-in"),
                        visit.raw("password"),
                        role.orElseThrow());
        if (added == People.Added.DONE) {
            visit.go("/people");
        } else {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.people." + added.word());
        }
    }

    /** Takes or gives back somebody's right to sign in; nobody does that to themselves, so that an owner stays. */
    void setActive(Context context) {
        Visit visit = Visit.of(context);
        Optional<CardId> id =
                visit.card().filter(card -> !card.equals(visit.person().id()));
        if (id.isEmpty()) {
            visit.refuse(HttpStatus.CONFLICT);
            return;
        }
        boolean active = visit.form("active").equals("yes");
        new People(visit.book().cards()).setActive(id.orElseThrow(), active, visit.author());
        if (!active) {
            sessions.endAll(id.orElseThrow());
        }
        visit.go("/people");
    }

    /** A new password for somebody who forgot theirs, told by the owner and to be changed by them; ends their sessions. */
    void setPassword(Context context) {
        Visit visit = Visit.of(context);
        Optional<CardId> id =
                visit.card().filter(card -> !card.equals(visit.person().id()));
        if (id.isEmpty()) {
            visit.refuse(HttpStatus.CONFLICT);
            return;
        }
        People.Added set =
                new People(visit.book().cards()).setPassword(id.orElseThrow(), visit.raw("password"), visit.author());
        if (set == People.Added.DONE) {
            sessions.endAll(id.orElseThrow());
            visit.go("/people");
        } else {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.people." + set.word());
        }
    }

    private static void show(Visit visit, HttpStatus status, String problem) {
        visit.show(
                status,
                "people",
                Map.of(
                        "lines", new People(visit.book().cards()).list(),
                        "roles", List.of(Role.values()),
                        "me", visit.person().id(),
                        "problem", problem));
    }
}
