package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomproof.book.card.Card;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.desk.KeptFaults;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.finished.ComebackCase;
import org.loomproof.pages.finished.SleepCurrent;
import org.loomproof.pages.finished.TestRound;
import org.loomproof.pages.finished.TestStep;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.Work.TestResult.Result;
import org.loomproof.pages.work.WorkLog;

/** The tests of a finished car one step at a time, and its hand-over: nothing of either is done in any other way. */
final class TestPages {

    private static final String SIGNATURE = "signature-hand-over";

    private final Shop shop;
    private final SpentPages spent;

    TestPages(Shop shop, SpentPages spent) {
        this.shop = shop;
        this.spent = spent;
    }

    /** What is known when a page of this job is shown or a form of it comes in. */
    private record Stand(
            Card job,
            Optional<KeptFaults> faults,
            Optional<TestRound> round,
            SleepCurrent sleep,
            List<String> blocked) {

        static Stand of(Visit visit, Card job) {
            Planning planning = new Planning(visit.book(), visit.messages());
            List<Noted> log = new WorkLog(visit.book(), job.id()).standing();
            Optional<KeptFaults> faults = planning.faults(job);
            Optional<TestRound> round = faults.flatMap(kept ->
                    planning.planSum(job).map(sum -> TestRound.in(kept, sum + "-" + ComebackCase.mended(log), log)));
            double added = faults.map(KeptFaults::mostAddedMilliamps).orElse(0.0);
            return new Stand(
                    job,
                    faults,
                    round,
                    SleepCurrent.of(job.get("sleep-milliamps"), added),
                    blocked(planning, job, faults, log));
        }

        /** Why nothing can pass, as keys of messages. */
        private static List<String> blocked(Planning planning, Card job, Optional<KeptFaults> faults, List<Noted> log) {
            List<String> blocked = new ArrayList<>();
            if (!JobStep.PLAN.isDone(job)) {
                blocked.add("pages.test.blocked.not-proven");
            }
            boolean deviated = log.stream()
                    .filter(noted -> noted.work() instanceof Work.Deviation)
                    .anyMatch(noted -> planning.provenAt(job)
                            .map(proven -> noted.at().isAfter(proven))
                            .orElse(true));
            if (deviated) {
                blocked.add("pages.test.blocked.deviation");
            }
            if (faults.filter(kept -> kept.left() == 0).isEmpty()) {
                blocked.add("pages.test.blocked.untried");
            }
            return blocked;
        }

        boolean mayPass() {
            return blocked.isEmpty() && round.filter(TestRound::isClosed).isPresent();
        }
    }

    void show(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit)
                .ifPresent(job -> show(visit, HttpStatus.OK, Stand.of(visit, job), visit.query("step"), "", ""));
    }

    private void show(Visit visit, HttpStatus status, Stand stand, String wanted, String problem, String signature) {
        Map<String, Object> shown = new HashMap<>();
        shown.put("job", stand.job());
        shown.put("round", stand.round());
        shown.put(
                "step",
                stand.round()
                        .flatMap(round ->
                                round.step(wanted).or(() -> isTested(stand.job()) ? Optional.empty() : round.next())));
        shown.put("sleep", stand.sleep());
        shown.put("blocked", stand.blocked());
        shown.put("problem", problem);
        shown.put("signature", signature);
        shown.put(
                "entry", Entry.of(shop.clock().instant(), new Work.Undone("-")).id());
        shown.put(
                "progress",
                shop.background()
                        .flatMap(background -> background.find(stand.job().id())));
        visit.show(status, "finished/test", shown);
    }

    private static boolean isTested(Card job) {
        return JobStep.TEST.isDone(job);
    }

    /** How one step ended; sent twice it is written once, since the form names its entry. */
    void note(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Stand stand = Stand.of(visit, job);
            Optional<TestStep> step = stand.round().flatMap(round -> round.step(visit.form("step")));
            Optional<Result> result = result(visit.form("result"));
            if (step.isEmpty() || result.isEmpty() || isTested(job)) {
                visit.refuse(HttpStatus.CONFLICT);
                return;
            }
            String problem = problem(visit, stand, step.orElseThrow(), result.orElseThrow());
            if (!problem.isEmpty()) {
                show(
                        visit,
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        stand,
                        step.orElseThrow().id(),
                        problem,
                        "");
                return;
            }
            write(visit, stand, step.orElseThrow(), result.orElseThrow());
        });
    }

    private void write(Visit visit, Stand stand, TestStep step, Result result) {
        boolean waived = result == Result.WAIVED;
        try {
            Entry entry = new Entry(
                    visit.form("entry"),
                    shop.clock().instant(),
                    new Work.TestResult(
                            step.id(),
                            stand.round().orElseThrow().of(),
                            result,
                            visit.form("seen"),
                            waived ? visit.form("by") : "",
                            waived ? visit.form("why") : ""));
            new WorkLog(visit.book(), stand.job().id()).add(visit.author(), List.of(entry));
        } catch (IllegalArgumentException e) {
            visit.refuse(HttpStatus.BAD_REQUEST); // no form of ours: too long, or not the name of an entry
            return;
        }
        visit.go("/jobs/" + stand.job().id() + "/test");
    }

    /** What is wrong with a form, as the key of a message. */
    private static String problem(Visit visit, Stand stand, TestStep step, Result result) {
        return switch (result) {
            case WAIVED ->
                visit.form("by").isEmpty() || visit.form("why").isEmpty() ? "pages.test.problem.who-and-why" : "";
            case FAILED -> visit.form("seen").isEmpty() ? "pages.test.problem.seen" : "";
            case PASSED -> step.phase() == TestStep.Phase.SLEEP ? sleepProblem(visit.form("seen"), stand.sleep()) : "";
        };
    }

    private static String sleepProblem(String seen, SleepCurrent sleep) {
        OptionalDouble milliamps = SleepCurrent.milliamps(seen);
        if (milliamps.isEmpty()) {
            return "pages.test.problem.milliamps";
        }
        if (sleep.most().isEmpty()) {
            return "pages.test.problem.not-compared";
        }
        return sleep.isKept(milliamps.getAsDouble()) ? "" : "pages.test.problem.draws-more";
    }

    private static Optional<Result> result(String word) {
        return switch (word) {
            case "passed" -> Optional.of(Result.PASSED);
            case "failed" -> Optional.of(Result.FAILED);
            case "waived" -> Optional.of(Result.WAIVED);
            default -> Optional.empty();
        };
    }

    /** The tests are passed: every step is closed, and the plan they were computed from is still the proven one. */
    void pass(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            if (Stand.of(visit, job).mayPass() && JobStep.next(job).equals(Optional.of(JobStep.TEST))) {
                JobPages.save(visit, "vehicle", job, "job.test", Map.of(JobStep.TEST.entry(), shop.today()));
            } else {
                visit.refuse(HttpStatus.CONFLICT);
            }
        });
    }

    /** The customer signs, and has the car. */
    void handOver(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Stand stand = Stand.of(visit, job);
            if (!stand.mayPass() || !JobStep.next(job).equals(Optional.of(JobStep.HAND_OVER))) {
                visit.refuse(HttpStatus.CONFLICT);
                return;
            }
            Optional<byte[]> drawn = CheckInPages.drawn(visit.raw("signature"));
            String by = visit.form("signed-by");
            if (by.isEmpty()) {
                String kept = drawn.isPresent() ? visit.raw("signature") : "";
                show(visit, HttpStatus.UNPROCESSABLE_CONTENT, stand, "", "pages.test.problem.not-signed", kept);
                return;
            }
            drawn.ifPresent(bytes -> visit.book().attachments().add(job.id(), visit.author(), SIGNATURE, bytes));
            Map<String, String> done = Map.of(JobStep.HAND_OVER.entry(), shop.today(), "handed-over-to", by);
            if (JobPages.save(visit, "vehicle", job, "job.hand-over", done)) {
                spent.count(visit, job);
            }
        });
    }
}
