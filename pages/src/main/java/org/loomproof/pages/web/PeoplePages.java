package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardLine;
import org.loomproof.pages.door.DoorLog;
import org.loomproof.pages.door.DoorLog.What;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Role;
import org.loomproof.pages.door.Sessions;

/** Who works here. */
final class PeoplePages {

    private final Sessions sessions;
    private final DoorLog log;

    PeoplePages(Sessions sessions, DoorLog log) {
        this.sessions = sessions;
        this.log = log;
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

    /** Takes or gives back somebody's right to sign in. */
    void setActive(Context context) {
        Visit visit = Visit.of(context);
        somebodyElse(visit).ifPresent(id -> {
            boolean active = visit.form("active").equals("yes");
            new People(visit.book().cards()).setActive(id, active, visit.author());
            log.tell(active ? What.ACCESS_GIVEN : What.ACCESS_TAKEN, Optional.of(id), context.ip());
            if (!active) {
                sessions.endAll(id);
            }
            visit.go("/people");
        });
    }

    /** A new password for somebody who forgot theirs, told by the owner and changed by them at once; ends their sessions. */
    void setPassword(Context context) {
        Visit visit = Visit.of(context);
        somebodyElse(visit).ifPresent(id -> {
            People.Added set = new People(visit.book().cards()).setPassword(id, visit.raw("password"), visit.author());
            if (set == People.Added.DONE) {
                log.tell(What.PASSWORD_CHANGED, Optional.of(id), context.ip());
                sessions.endAll(id);
                visit.go("/people");
            } else {
                show(visit, HttpStatus.UNPROCESSABLE_CONTENT, "pages.people." + set.word());
            }
        });
    }

    /** For somebody who lost phone and spare code. */
    void endSecondStep(Context context) {
        Visit visit = Visit.of(context);
        somebodyElse(visit).ifPresent(id -> {
            new People(visit.book().cards()).endSecondStep(id, visit.author());
            log.tell(What.SECOND_STEP_ENDED, Optional.of(id), context.ip());
            sessions.endAll(id);
            visit.go("/people");
        });
    }

    /** Whom the address names; refused for oneself, so that an owner stays and nobody gets around their own password. */
    private static Optional<CardId> somebodyElse(Visit visit) {
        Optional<CardId> id =
                visit.card().filter(card -> !card.equals(visit.person().id()));
        if (id.isEmpty()) {
            visit.refuse(HttpStatus.CONFLICT);
        }
        return id;
    }

    private static void show(Visit visit, HttpStatus status, String problem) {
        People people = new People(visit.book().cards());
        List<CardLine> lines = people.list();
        visit.show(
                status,
                "people",
                Map.of(
                        "lines", lines,
                        "secondStep",
                                lines.stream()
                                        .map(CardLine::id)
                                        .filter(people::hasSecondStep)
                                        .collect(Collectors.toSet()),
                        "roles", List.of(Role.values()),
                        "me", visit.person().id(),
                        "problem", problem));
    }
}
