package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.CardLine;
import org.loomproof.book.card.Entries;
import org.loomproof.book.card.Listing;
import org.loomproof.book.card.Saved;
import org.loomproof.book.vehicle.VehicleNumber;
import org.loomproof.pages.bay.Spent;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.desk.Runs;
import org.loomproof.pages.desk.Shelf;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.desk.Texts;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Right;
import org.loomproof.pages.work.WorkLog;

/** The list of jobs, and one job with what is entered of it. */
final class JobPages {

    private static final int A_PAGE = 40;
    private static final List<String> VEHICLE = List.of("plate", "number", "make", "model", "year", "due", "title");
    private static final List<String> HIDDEN = List.of("hidden");

    private final Shop shop;
    private final SheetChecks checks;

    JobPages(Shop shop, SheetChecks checks) {
        this.shop = shop;
        this.checks = checks;
    }

    void list(Context context) {
        Visit visit = Visit.of(context);
        String words = visit.query("find");
        String stage = visit.query("stage");
        Listing listing = Listing.all(CardKind.JOB, A_PAGE).foundBy(words);
        if (!stage.isEmpty()) {
            listing = listing.at(stage);
        }
        int from = visit.query("from").matches("\\d{1,6}") ? Integer.parseInt(visit.query("from")) : 0;
        visit.show(
                "jobs",
                Map.of(
                        "lines",
                        visit.book().cards().list(listing.after(from)),
                        "count",
                        visit.book().cards().count(listing),
                        "from",
                        from,
                        "next",
                        from + A_PAGE,
                        "words",
                        words,
                        "stage",
                        stage,
                        "today",
                        shop.today()));
    }

    /** A job of the address, or a page that says there is none. */
    static Optional<Card> job(Visit visit) {
        Optional<Card> job =
                visit.card().flatMap(id -> visit.book().cards().find(id)).filter(card -> card.kind() == CardKind.JOB);
        if (job.isEmpty()) {
            visit.refuse(HttpStatus.NOT_FOUND);
        }
        return job;
    }

    /** The job that a code on a paper names: the first in the list of those whose order calls the job so. */
    static Optional<CardId> bySum(Visit visit) {
        String sum = visit.part("id");
        return visit.book().cards().list(Listing.all(CardKind.JOB, A_PAGE).foundBy(sum)).stream()
                .map(CardLine::id)
                .filter(id -> visit.book()
                        .cards()
                        .find(id)
                        .filter(job -> job.get("sum").equals(sum))
                        .isPresent())
                .findFirst();
    }

    void show(Context context) {
        Visit visit = Visit.of(context);
        job(visit).ifPresent(job -> {
            People people = new People(visit.book().cards());
            List<History> history = new ArrayList<>();
            visit.book()
                    .cards()
                    .events(job.id())
                    .forEach(event ->
                            history.add(0, new History(event.at(), people.name(event.who()), "event." + event.what())));
            visit.show(
                    "job",
                    Map.of(
                            "lacking", JobStep.BENCH.isDone(job) ? List.of() : new Shelf(visit.book()).lacking(job),
                            "job", job,
                            "customer", customer(visit, job),
                            "steps", List.of(JobStep.values()),
                            "next", JobStep.next(job),
                            "history", history,
                            "spent",
                                    Optional.of(visit.person().role())
                                            .filter(role -> role.has(Right.WORK))
                                            .map(role -> Spent.of(new WorkLog(visit.book(), job.id()).standing()))));
        });
    }

    static Entries customer(Visit visit, Card job) {
        return visit.book().cards().find(job.customer()).map(Card::entries).orElse(Entries.NONE);
    }

    void vehicle(Context context) {
        Visit visit = Visit.of(context);
        job(visit).ifPresent(job -> form(visit, "vehicle", job, job.entries(), Map.of()));
    }

    void saveVehicle(Context context) {
        Visit visit = Visit.of(context);
        List<String> names = new ArrayList<>(VEHICLE);
        if (visit.person().role().has(Right.WORK)) {
            names.addAll(HIDDEN);
        }
        Map<String, String> fields = new HashMap<>(visit.form(names));
        fields.computeIfPresent("number", (name, text) -> new VehicleNumber(text).text());
        job(visit).ifPresent(job -> save(visit, "vehicle", job, "job.vehicle", fields));
    }

    /** Says that a job waits for parts, or that they are here. */
    void parts(Context context) {
        Visit visit = Visit.of(context);
        boolean waits = visit.form("waits").equals("yes");
        job(visit)
                .ifPresent(job -> save(
                        visit,
                        "vehicle",
                        job,
                        waits ? "job.waits-for-parts" : "job.parts-here",
                        Map.of(JobStep.PARTS, waits ? shop.today() : "")));
    }

    /** Says that a step is done which only a person can know. */
    void said(Context context) {
        Visit visit = Visit.of(context);
        job(visit).ifPresent(job -> {
            Optional<JobStep> next = JobStep.next(job);
            Optional<JobStep> said = JobStep.in(visit.part("step")).filter(JobStep::isSaid);
            if (said.isEmpty() || !next.equals(said)) {
                visit.refuse(HttpStatus.CONFLICT); // out of its turn, or done already
                return;
            }
            JobStep step = said.orElseThrow();
            Map<String, String> done = new HashMap<>(Runs.built(job));
            done.put(step.entry(), shop.today());
            if (save(visit, "vehicle", job, "job." + step.word(), done)) {
                if (step == JobStep.BENCH) {
                    new Shelf(visit.book()).take(job, visit.author());
                } else {
                    checks.bayDone(visit, job);
                }
            }
        });
    }

    /**
     * Saves entries from a form that was made from the version it names, and goes back to the job; the second of two is shown
     * what the first one changed, and both texts.
     *
     * @return false when nothing was saved
     */
    static boolean save(Visit visit, String template, Card job, String what, Map<String, String> fields) {
        int seen = visit.number("seen", 0);
        Map<String, String> changes = new HashMap<>(fields);
        Card after = new Card(
                job.id(),
                job.kind(),
                job.customer(),
                job.version(),
                job.entries().with(fields));
        if (differ(Texts.BEHIND_A_VERDICT, job, after)) {
            if (differ(Texts.OF_A_JOB, job, after)) {
                changes.put(Texts.BY_HAND, ""); // it was decided for other texts
            }
            changes.putAll(Runs.overtaken(job));
            changes.put(JobStep.TEST.entry(), "");
            changes.put(JobStep.HAND_OVER.entry(), "");
            changes.put("deviated", ""); // the texts or the plan say now what was done
        }
        Saved saved =
                visit.book().cards().change(job.id(), seen, visit.author(), what, JobStep.withStage(job, changes));
        switch (saved) {
            case Saved.Done ignored -> visit.go("/jobs/" + job.id());
            case Saved.Gone ignored -> visit.refuse(HttpStatus.NOT_FOUND);
            case Saved.Overtaken(Card now) ->
                form(
                        visit,
                        template,
                        now,
                        now.entries().with(fields),
                        now.entries()
                                .only(now.entries().differing(fields).keySet())
                                .values());
        }
        return saved instanceof Saved.Done;
    }

    /** A verdict stands for the texts it was made from and no others. */
    private static boolean differ(List<String> texts, Card before, Card after) {
        return texts.stream().anyMatch(name -> !before.get(name).equals(after.get(name)));
    }

    /**
     * Shows a form.
     *
     * @param theirs what somebody else wrote meanwhile, by entry
     */
    static void form(Visit visit, String template, Card job, Entries entries, Map<String, String> theirs) {
        VehicleNumber number = new VehicleNumber(entries.get("number"));
        visit.show(
                theirs.isEmpty() ? HttpStatus.OK : HttpStatus.CONFLICT,
                template,
                Map.of("job", job, "entries", entries, "theirs", theirs, "number", number.standing()));
    }
}
