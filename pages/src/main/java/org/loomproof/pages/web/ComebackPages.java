package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.pages.bay.ByRun;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.finished.ComebackCase;
import org.loomproof.pages.finished.Suspects;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.WorkLog;
import org.loomproof.workshop.meter.comeback.Taken;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.ProblemText;

/** A car that came back: the complaint, reading after reading, and the cause. */
final class ComebackPages {

    private final Shop shop;
    private final ByRun<Suspects> suspects = new ByRun<>();

    ComebackPages(Shop shop) {
        this.shop = shop;
    }

    void show(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> show(visit, HttpStatus.OK, job, List.of()));
    }

    private void show(Visit visit, HttpStatus status, Card job, List<String> problems) {
        Optional<ComebackCase> open = ComebackCase.in(new WorkLog(visit.book(), job.id()).standing());
        Optional<Suspects> known = suspects(visit, job);
        Map<String, Object> shown = new HashMap<>();
        shown.put("job", job);
        shown.put("open", open);
        shown.put("suspects", known);
        shown.put("standing", open.flatMap(one -> known.map(all -> all.standing(one.complaint(), one.readings()))));
        shown.put("problems", problems);
        shown.put(
                "entry", Entry.of(shop.clock().instant(), new Work.Undone("-")).id());
        shown.put("progress", shop.background().flatMap(background -> background.find(job.id())));
        visit.show(status, "finished/comeback", shown);
    }

    private Optional<Suspects> suspects(Visit visit, Card job) {
        Planning planning = new Planning(visit.book(), visit.messages());
        return planning.faults(job)
                .flatMap(faults -> suspects.of(
                        job,
                        () -> planning.planFile(job)
                                .map(file -> Suspects.of(file.given().brief(), file.plan(), faults))));
    }

    void complain(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            List<String> known = Suspects.known(visit.context().formParams("symptom"));
            if (known.isEmpty()) {
                show(
                        visit,
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        job,
                        List.of(visit.messages().text("pages.comeback.problem.symptom")));
            } else if (note(
                    visit,
                    job,
                    new Work.Complaint(
                            String.join(" ", known), visit.form("now-and-then").equals("yes")))) {
                mark(visit, job, "job.come-back", Map.of(JobStep.COME_BACK, shop.today()));
                back(visit, job);
            }
        });
    }

    void read(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Optional<Suspects> known = suspects(visit, job);
            if (known.isEmpty()
                    || ComebackCase.in(new WorkLog(visit.book(), job.id()).standing())
                            .isEmpty()) {
                visit.refuse(HttpStatus.CONFLICT);
                return;
            }
            String value = visit.form("act").equals("pass") ? Suspects.NOT_TAKEN : visit.form("value");
            try {
                Work.ComebackReading reading =
                        new Work.ComebackReading(visit.form("place"), visit.form("step"), value, visit.form("battery"));
                if (known.orElseThrow().read(reading) instanceof Checked.Bad<List<Taken>>(var problems)) {
                    show(visit, HttpStatus.UNPROCESSABLE_CONTENT, job, ProblemText.lines(problems, visit.messages()));
                } else if (note(visit, job, reading)) {
                    back(visit, job);
                }
            } catch (IllegalArgumentException e) {
                show(
                        visit,
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        job,
                        List.of(visit.messages().text("pages.comeback.problem.value")));
            }
        });
    }

    /** Takes a reading back, or a complaint with all that hangs on it. */
    void undo(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            if (visit.form("undone").isEmpty()) {
                visit.refuse(HttpStatus.BAD_REQUEST);
            } else if (note(visit, job, new Work.Undone(visit.form("undone")))) {
                back(visit, job);
            }
        });
    }

    /** The cause was found and mended: the car is tested again before it is handed over again. */
    void found(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            String cause = visit.form("cause");
            String mended = visit.form("mended");
            if (cause.isEmpty() || mended.isEmpty()) {
                show(
                        visit,
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        job,
                        List.of(visit.messages().text("pages.comeback.problem.cause")));
            } else if (note(visit, job, new Work.CauseFound(cause, mended))) {
                mark(
                        visit,
                        job,
                        "job.mended",
                        Map.of(JobStep.COME_BACK, "", JobStep.TEST.entry(), "", JobStep.HAND_OVER.entry(), ""));
                visit.go("/jobs/" + job.id());
            }
        });
    }

    /** Writes an entry under the name that the form gave it; false, with the visit refused, when that is none. */
    private boolean note(Visit visit, Card job, Work work) {
        try {
            return new WorkLog(visit.book(), job.id())
                    .add(
                            visit.author(),
                            List.of(new Entry(visit.form("entry"), shop.clock().instant(), work)))
                    .isPresent();
        } catch (IllegalArgumentException e) {
            visit.refuse(HttpStatus.BAD_REQUEST);
            return false;
        }
    }

    /** What the log says already holds whoever else changes the job meanwhile. */
    private static void mark(Visit visit, Card job, String what, Map<String, String> changes) {
        visit.book().cards().amend(job, visit.author(), what, now -> JobStep.withStage(now, changes));
    }

    private static void back(Visit visit, Card job) {
        visit.go("/jobs/" + job.id() + "/comeback");
    }
}
