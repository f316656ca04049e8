package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.loomproof.book.card.Card;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Tried;
import org.loomproof.pages.desk.Handover;

/** What only an owner does: another passphrase for the book, and what a customer may ask about their own data. */
final class OwnerPages {

    private final Stretching stretching;

    OwnerPages(Stretching stretching) {
        this.stretching = stretching;
    }

    void book(Context context) {
        show(Visit.of(context), HttpStatus.OK, "", false);
    }

    void changePassphrase(Context context) {
        Visit visit = Visit.of(context);
        String next = visit.raw("passphrase");
        String problem = "";
        if (!next.equals(visit.raw("again"))) {
            problem = "pages.begin.not-the-same";
        } else if (visit.form("understood").isEmpty()) {
            problem = "pages.begin.not-understood";
        } else if (visit.book().changePassphrase(Passphrase.of(visit.raw("old")), Passphrase.of(next), stretching)
                instanceof Tried.Not<Boolean>(Refusal why)) {
            problem = "pages.unlock." + why.word();
        }
        boolean done = problem.isEmpty();
        show(visit, done ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT, problem, done);
    }

    private static void show(Visit visit, HttpStatus status, String problem, boolean done) {
        visit.show(status, "book", Map.of("problem", problem, "done", done));
    }

    void customer(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> showCustomer(visit, HttpStatus.OK, job, ""));
    }

    void export(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit)
                .ifPresent(job -> context.header("Content-Disposition", "attachment; filename=\"customer.zip\"")
                        .contentType("application/zip")
                        .result(new Handover(visit.book()).of(job.customer())));
    }

    /** Says what stayed, since nobody can look it up afterwards. */
    void erase(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            if (visit.form("understood").isEmpty()) {
                showCustomer(visit, HttpStatus.UNPROCESSABLE_CONTENT, job, "pages.customer.not-understood");
                return;
            }
            List<Card> remains = visit.book().customers().erase(job.customer(), visit.author());
            visit.show("erased", Map.of("remains", remains));
        });
    }

    private static void showCustomer(Visit visit, HttpStatus status, Card job, String problem) {
        visit.show(
                status,
                "customer",
                Map.of(
                        "job",
                        job,
                        "customer",
                        JobPages.customer(visit, job),
                        "jobs",
                        visit.book().cards().jobsOf(job.customer()).size(),
                        "problem",
                        problem));
    }
}
