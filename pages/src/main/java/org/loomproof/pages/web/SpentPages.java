package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.loomproof.book.card.Card;
import org.loomproof.pages.bay.BayJob;
import org.loomproof.pages.bay.BayJobs;
import org.loomproof.pages.bay.Spent;
import org.loomproof.pages.bay.TimedStep;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.desk.Shelf;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.desk.Timings;
import org.loomproof.pages.door.People;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.WorkLog;
import org.loomproof.papers.bay.VisitText;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.goods.shelf.Article;

/** Parts used and minutes spent at a job: noted by whoever did the work, taken off the shelf, and counted for the shop's later quotes. */
final class SpentPages {

    private static final int LONGEST_SIZE = 60;

    private final Shop shop;
    private final BayJobs bays;

    SpentPages(Shop shop, BayJobs bays) {
        this.shop = shop;
        this.bays = bays;
    }

    void show(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> show(visit, HttpStatus.OK, job, List.of(), Map.of()));
    }

    private void show(Visit visit, HttpStatus status, Card job, List<String> problems, Map<String, String> typed) {
        Optional<BayJob> bay = bays.of(job, visit.book());
        Map<String, String> steps = new LinkedHashMap<>();
        TimedStep.of(bay).forEach(step -> steps.put(step.id(), label(visit, bay, step)));
        Map<String, Object> shown = new HashMap<>();
        shown.put("job", job);
        shown.put("steps", steps);
        shown.put("spent", Spent.of(new WorkLog(visit.book(), job.id()).standing()));
        shown.put("people", new People(visit.book().cards()));
        shown.put(
                "articles",
                Stream.of(Article.Kind.values())
                        .filter(kind -> kind != Article.Kind.KIT && kind != Article.Kind.EXTRA)
                        .toList());
        shown.put("problems", problems);
        shown.put("typed", typed);
        visit.show(status, "spent", shown);
    }

    private static String label(Visit visit, Optional<BayJob> planned, TimedStep step) {
        if (!step.panel().isEmpty()) {
            return visit.messages().text("pages.spent.panel", step.panel());
        }
        return step.step()
                .flatMap(at -> planned.map(bay ->
                        new VisitText(bay.brief(), bay.plan(), new Wording(visit.messages())).headline(at.visit())))
                .orElseGet(() -> visit.messages().text("pages.spent.step." + step.id()));
    }

    void noteMinutes(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            List<String> problems = new ArrayList<>();
            String step = visit.form("step");
            if (TimedStep.of(bays.of(job, visit.book())).stream()
                    .noneMatch(known -> known.id().equals(step))) {
                problems.add("pages.spent.problem.step");
            }
            OptionalDouble minutes = number(visit.form("minutes"), Work.A_DAY);
            if (minutes.isEmpty()) {
                problems.add("pages.spent.problem.minutes");
            }
            note(visit, job, problems, () -> new Work.MinutesSpent(step, minutes.orElseThrow()));
        });
    }

    void notePart(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            List<String> problems = new ArrayList<>();
            String article = visit.form("article");
            if (UsedArticle.kind(article).isEmpty()) {
                problems.add("pages.spent.problem.article");
            }
            OptionalDouble count = number(visit.form("count"), Work.PartUsed.MOST);
            if (count.isEmpty()) {
                problems.add("pages.spent.problem.count");
            }
            String size = visit.form("size");
            String lot = visit.form("lot");
            if (size.length() > LONGEST_SIZE || lot.length() > LONGEST_SIZE) {
                problems.add("pages.spent.problem.long");
            }
            note(visit, job, problems, () -> new Work.PartUsed(article, size, count.orElseThrow(), lot));
        });
    }

    /** Takes one of them back; what was used goes back on the shelf. */
    void undo(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Spent spent = Spent.of(new WorkLog(visit.book(), job.id()).standing());
            Optional<Noted> noted = Stream.concat(spent.minutes().stream(), spent.parts().stream())
                    .filter(one -> one.id().equals(visit.form("of")))
                    .findFirst();
            if (noted.isEmpty()) {
                visit.go(path(job)); // taken back already
            } else {
                write(visit, job, new Work.Undone(noted.orElseThrow().id()), noted);
            }
        });
    }

    /** What is to be written, once the form was found to be without a problem. */
    private interface Made {
        Work work();
    }

    private void note(Visit visit, Card job, List<String> problems, Made made) {
        if (problems.isEmpty()) {
            write(visit, job, made.work(), Optional.empty());
        } else {
            show(
                    visit,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    job,
                    problems,
                    visit.form(List.of("step", "minutes", "article", "size", "count", "lot")));
        }
    }

    private void write(Visit visit, Card job, Work work, Optional<Noted> undone) {
        Entry entry;
        try {
            entry = new Entry(visit.form("entry"), shop.clock().instant(), work);
        } catch (IllegalArgumentException e) {
            visit.refuse(HttpStatus.BAD_REQUEST); // no form of ours: not the name of an entry
            return;
        }
        Optional<List<Entry>> written = new WorkLog(visit.book(), job.id()).add(visit.author(), List.of(entry));
        if (written.isEmpty()) {
            visit.refuse(HttpStatus.NOT_FOUND);
            return;
        }
        if (!written.orElseThrow().isEmpty()) {
            shelve(visit, work, undone);
            if (JobStep.HAND_OVER.isDone(job)) {
                count(visit, job);
            }
        }
        visit.go(path(job));
    }

    /** Brings the shelf to what was written. */
    private static void shelve(Visit visit, Work work, Optional<Noted> undone) {
        Shelf shelf = new Shelf(visit.book());
        if (work instanceof Work.PartUsed used) {
            shelf.take(UsedArticle.of(used), BigDecimal.valueOf(used.count()), visit.author());
        } else if (undone.map(Noted::work).orElse(work) instanceof Work.PartUsed used) {
            shelf.putBack(UsedArticle.of(used), BigDecimal.valueOf(used.count()), visit.author());
        }
    }

    /** When a car is handed over its minutes are counted for later quotes; what is noted afterwards counts anew. */
    void count(Visit visit, Card job) {
        List<TimedStep> steps = TimedStep.of(bays.of(job, visit.book()));
        Spent spent = Spent.of(new WorkLog(visit.book(), job.id()).standing());
        new Timings(visit.book()).count(job, spent.timings(steps), visit.author());
    }

    private static String path(Card job) {
        return "/jobs/" + job.id() + "/spent";
    }

    /** A number above nothing and not above the most, with a point or a comma. */
    private static OptionalDouble number(String text, double most) {
        if (!text.matches("\\d{1,5}([.,]\\d{1,3})?")) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(text.replace(',', '.'));
        return number > 0 && number <= most ? OptionalDouble.of(number) : OptionalDouble.empty();
    }
}
