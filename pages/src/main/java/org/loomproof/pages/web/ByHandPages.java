package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.pages.desk.ByHand;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.desk.Texts;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.WorkLog;
import org.loomproof.papers.page.Wording;

/**
 * A job's plan changed by hand, after something was done otherwise in the car or because a technician knows better: figures in rows, or
 * the whole of what was decided as a text. It is proven like a plan of our own before anything passes.
 */
final class ByHandPages {

    /** What a form is about: figures in rows, the whole text, the plan as it was, or no plan by hand any more. */
    private static final String AS = "as";

    private final Shop shop;

    ByHandPages(Shop shop) {
        this.shop = shop;
    }

    /**
     * What the page shows.
     *
     * @param stands the plan as it is kept, of which the rows are
     * @param text what is in the text's field
     * @param typed what is in the rows' fields, where it is not what is kept
     * @param problems why nothing was saved
     */
    private record Form(String stands, String text, Map<String, Map<String, String>> typed, List<String> problems) {
        Form with(List<String> found) {
            return new Form(stands, text, typed, found);
        }
    }

    void show(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit)
                .ifPresent(job -> new Planning(visit.book(), visit.messages())
                        .decided(job)
                        .ifPresentOrElse(
                                text -> show(visit, HttpStatus.OK, job, new Form(text, text, Map.of(), List.of())),
                                () -> visit.refuse(HttpStatus.NOT_FOUND)));
    }

    private static void show(Visit visit, HttpStatus status, Card job, Form form) {
        Wording words = new Wording(visit.messages());
        Map<String, Object> shown = new HashMap<>();
        shown.put("job", job);
        shown.put("text", form.text());
        shown.put("problems", form.problems());
        shown.put(
                "rows",
                new Planning(visit.book(), visit.messages())
                        .decidedFile(job, form.stands())
                        .map(file -> ByHand.rows(file.plan(), form.typed(), words))
                        .orElse(List.of()));
        shown.put("deviations", deviations(visit, job));
        visit.show(status, "by-hand", shown);
    }

    /** What was noted in the car as done otherwise, while no plan says so. */
    private static List<Work.Deviation> deviations(Visit visit, Card job) {
        return job.get("deviated").isBlank()
                ? List.of()
                : new WorkLog(visit.book(), job.id())
                        .standing().stream()
                                .map(Noted::work)
                                .filter(Work.Deviation.class::isInstance)
                                .map(Work.Deviation.class::cast)
                                .toList();
    }

    void save(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Planning planning = new Planning(visit.book(), visit.messages());
            Optional<String> kept = planning.decided(job);
            if (kept.isEmpty()) {
                visit.refuse(HttpStatus.NOT_FOUND);
                return;
            }
            String stands = kept.orElseThrow();
            switch (visit.form(AS)) {
                case "figures" -> {
                    Map<String, Map<String, String>> typed = ByHand.typed(
                            visit.form(visit.context().formParamMap().keySet()));
                    String text = planning.decided(job, typed).orElse("");
                    changed(visit, job, new Form(stands, text, typed, List.of()));
                }
                case "text" -> changed(visit, job, new Form(stands, visit.raw("text"), Map.of(), List.of()));
                case "stands" -> unchanged(visit, job, new Form(stands, stands, Map.of(), List.of()));
                case "none" -> save(visit, job, "job.by-hand-dropped", Map.of(Texts.BY_HAND, ""));
                default -> visit.refuse(HttpStatus.BAD_REQUEST);
            }
        });
    }

    /** What changes nothing is not kept: it would pass for an answer to what was done otherwise. */
    private void changed(Visit visit, Card job, Form form) {
        List<String> problems = new Texts(visit.messages()).problemsByHand(form.text(), job);
        if (problems.isEmpty() && form.text().equals(form.stands())) {
            problems = List.of(visit.messages().text("pages.by-hand.same"));
        }
        if (problems.isEmpty()) {
            save(visit, job, "job.by-hand", Map.of(Texts.BY_HAND, form.text()));
        } else {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, job, form.with(problems));
        }
    }

    /** Somebody says, by name and reason, that the plan needs no change; it is proven again all the same. */
    private void unchanged(Visit visit, Card job, Form form) {
        String why = visit.form("why");
        List<String> problems = why.isBlank()
                ? List.of(visit.messages().text("pages.by-hand.no-reason"))
                : new Texts(visit.messages()).problemsByHand(form.text(), job);
        if (problems.isEmpty()) {
            Map<String, String> said = Map.of(
                    Texts.BY_HAND, form.text(), "by-hand-stands", visit.person().name() + ": " + why, "deviated", "");
            save(visit, job, "job.by-hand-stands", said);
        } else {
            show(visit, HttpStatus.UNPROCESSABLE_CONTENT, job, form.with(problems));
        }
    }

    /** Keeps it and has it proven. */
    private void save(Visit visit, Card job, String what, Map<String, String> changes) {
        if (JobPages.save(visit, "text-again", job, what, changes)) {
            shop.background()
                    .orElseThrow(() -> new IllegalStateException("the book is locked"))
                    .plan(job.id(), visit.author(), visit.messages().locale());
            visit.go("/jobs/" + job.id() + "/plan");
        }
    }
}
