package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.loomproof.book.card.Card;
import org.loomproof.pages.bay.BatteryRows;
import org.loomproof.pages.bay.BayJob;
import org.loomproof.pages.bay.BayJobs;
import org.loomproof.pages.bay.BayStep;
import org.loomproof.pages.bay.JointPictures;
import org.loomproof.pages.bay.MeteredCircuit;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.WorkLog;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.bay.VisitText;
import org.loomproof.papers.card.BenchLead;
import org.loomproof.papers.card.JointText;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.goods.joint.Joints;

/** The bench and the bay: what is done with every lead, and one step at a time in the car. No customer and no hidden place. */
final class BayPages {

    /** The battery's own readings, by which all others are judged. */
    private static final String BATTERY = "@battery";

    private final BayJobs jobs;

    BayPages(BayJobs jobs) {
        this.jobs = jobs;
    }

    void bench(Context context) {
        Visit visit = Visit.of(context);
        planned(visit, (job, bay) -> {
            Wording words = new Wording(visit.messages());
            visit.show(
                    "bay/bench",
                    Map.of(
                            "job",
                            job,
                            "bay",
                            bay,
                            "plugs",
                            BenchLead.byPlug(bay.brief(), bay.plan(), words),
                            "ticked",
                            ticked(standing(visit, job))));
        });
    }

    void list(Context context) {
        Visit visit = Visit.of(context);
        planned(visit, (job, bay) -> {
            Set<String> ticked = ticked(standing(visit, job));
            visit.show(
                    "bay/bay",
                    Map.of(
                            "job",
                            job,
                            "bay",
                            bay,
                            "text",
                            new VisitText(bay.brief(), bay.plan(), new Wording(visit.messages())),
                            "ticked",
                            ticked,
                            "next",
                            bay.steps().stream()
                                    .filter(step -> !isDone(step, ticked))
                                    .findFirst()));
        });
    }

    /** A step of a job; also where a code on a bay sheet leads, which names the job by a sum of what the shop calls it. */
    void step(Context context) {
        Visit visit = Visit.of(context);
        if (visit.card().isEmpty()) {
            JobPages.bySum(visit)
                    .ifPresentOrElse(
                            job -> visit.go("/jobs/" + job + "/" + ShopAddress.stepId(visit.part("place"))),
                            () -> visit.refuse(HttpStatus.NOT_FOUND));
            return;
        }
        planned(visit, (job, bay) -> {
            Optional<BayStep> step = bay.find(visit.part("place"));
            if (visit.part("place").equals(BATTERY)) {
                visit.show("bay/battery", Map.of("job", job, "bay", bay, "rows", BatteryRows.of(standing(visit, job))));
            } else if (step.isPresent()) {
                show(visit, job, bay, step.orElseThrow());
            } else {
                visit.refuse(HttpStatus.NOT_FOUND);
            }
        });
    }

    private static void show(Visit visit, Card job, BayJob bay, BayStep step) {
        List<Noted> standing = standing(visit, job);
        Optional<MeteredCircuit> metered =
                step.visit().findCircuit().map((CircuitId circuit) -> bay.metered(circuit, standing));
        Map<String, Object> shown = new HashMap<>();
        shown.put("job", job);
        shown.put("bay", bay);
        shown.put("step", step);
        shown.put("text", new VisitText(bay.brief(), bay.plan(), new Wording(visit.messages())));
        shown.put("metered", metered);
        shown.put("answer", metered.map(MeteredCircuit::answer));
        shown.put("cut", metered.filter(one -> step.isCut()).map(one -> one.cut(standing)));
        Set<String> ticked = ticked(standing);
        JointText joints = new JointText(new Joints(bay.brief(), bay.plan()), new Wording(visit.messages()));
        shown.put("joints", joints);
        shown.put("pictures", new JointPictures(visit.book(), job.id()).all());
        shown.put("done", isDone(step, ticked));
        shown.put("after", bay.after(step, other -> isDone(other, ticked)));
        visit.show("bay/step", shown);
    }

    private void planned(Visit visit, BiConsumer<Card, BayJob> show) {
        planned(visit, jobs, show);
    }

    /** A job that has a plan, with its work; else the visit is told that there is none yet. */
    static void planned(Visit visit, BayJobs jobs, BiConsumer<Card, BayJob> show) {
        JobPages.job(visit)
                .ifPresent(job -> jobs.of(job, visit.book())
                        .ifPresentOrElse(bay -> show.accept(job, bay), () -> visit.refuse(HttpStatus.CONFLICT)));
    }

    private static List<Noted> standing(Visit visit, Card job) {
        return new WorkLog(visit.book(), job.id()).standing();
    }

    /** Steps that are ticked, each with the sum of what was to be done. */
    private static Set<String> ticked(List<Noted> standing) {
        Set<String> ticked = new HashSet<>();
        for (Noted noted : standing) {
            if (noted.work() instanceof Work.Tick(String step, String of, boolean done)) {
                if (done) {
                    ticked.add(step + " " + of);
                } else {
                    ticked.remove(step + " " + of);
                }
            }
        }
        return ticked;
    }

    private static boolean isDone(BayStep step, Set<String> ticked) {
        return ticked.contains(step.id() + " " + step.sum());
    }
}
