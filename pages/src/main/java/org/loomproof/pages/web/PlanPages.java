package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.book.card.Card;
import org.loomproof.book.work.TaskProgress;
import org.loomproof.pages.bay.BayJobs;
import org.loomproof.pages.bay.JointPictures;
import org.loomproof.pages.desk.Background;
import org.loomproof.pages.desk.JobStep;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.desk.Runs;
import org.loomproof.pages.desk.Shared;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.desk.Texts;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.bay.StepCodes;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.pdf.Pdf;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.papers.record.Photo;
import org.loomproof.papers.record.WarrantyRecord;
import org.loomproof.shop.job.ChangeWords;

/** Sheet, kit and order of a job, its plan and proof, what a new plan changes, and its papers. */
final class PlanPages {

    /** Nothing runs; of the same origin, so that who follows a step's link is still who is signed in. */
    private static final String PAPER_POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; sandbox allow-same-origin;"
                    + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private static final String HTML = ".html";
    private static final String PDF = ".pdf";
    private static final String BAY_SHEET = "bay-sheet" + HTML;
    private static final String RECORD = "warranty-record" + HTML;
    private static final Set<String> COMPLETED = Set.of(BAY_SHEET, RECORD);

    private final Shop shop;
    private final BayJobs bays;
    private final Listen listen;

    /** @param listen where the codes of printed steps lead */
    PlanPages(Shop shop, BayJobs bays, Listen listen) {
        this.shop = shop;
        this.bays = bays;
        this.listen = listen;
    }

    void text(Context context) {
        Visit visit = Visit.of(context);
        String name = visit.part("text");
        if (!Texts.OF_A_JOB.contains(name)) {
            visit.refuse(HttpStatus.NOT_FOUND);
            return;
        }
        JobPages.job(visit).ifPresent(job -> {
            String text = job.get(name);
            List<String> problems =
                    text.isEmpty() ? List.of() : new Texts(visit.messages()).problems(name, text, Optional.of(job));
            showText(visit, HttpStatus.OK, name, job, text, problems);
        });
    }

    /** Keeps a text only when it can be used; otherwise it is shown again with everything that is wrong with it. */
    void saveText(Context context) {
        Visit visit = Visit.of(context);
        String name = visit.part("text");
        if (!Texts.OF_A_JOB.contains(name)) {
            visit.refuse(HttpStatus.NOT_FOUND);
            return;
        }
        JobPages.job(visit).ifPresent(job -> {
            String text = visit.raw("text");
            List<String> problems = new Texts(visit.messages()).problems(name, text, Optional.of(job));
            if (problems.isEmpty()) {
                JobPages.save(visit, "text-again", job, "job." + name, Map.of(name, text));
            } else {
                showText(visit, HttpStatus.UNPROCESSABLE_CONTENT, name, job, text, problems);
            }
        });
    }

    /** A text of a job in its form, with what is wrong with it. */
    static void showText(Visit visit, HttpStatus status, String name, Card job, String text, List<String> problems) {
        Shared shared = new Shared(visit.book());
        visit.show(
                status,
                "text",
                Map.of(
                        "name",
                        name,
                        "job",
                        Optional.of(job),
                        "text",
                        text,
                        "problems",
                        problems,
                        "shared",
                        Shared.kind(name).map(shared::all).orElse(List.of()),
                        "from",
                        shared.takenBy(job, name)));
    }

    void plan(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Planning planning = new Planning(visit.book(), visit.messages());
            Map<String, Object> shown = new HashMap<>();
            shown.put("job", job);
            shown.put("progress", background().find(job.id()));
            shown.put(
                    "compares",
                    Runs.comparedWith(job).isPresent() && !job.get(Runs.LATEST).isEmpty());
            shown.put("verdicts", planning.verdicts(job));
            shown.put("papers", planning.papers(job));
            shown.put(
                    "missing",
                    Texts.OF_A_JOB.stream()
                            .filter(name -> job.get(name).isBlank())
                            .toList());
            visit.show("plan", shown);
        });
    }

    /** What the new plan changes about the old one, and nothing else. */
    void changes(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit)
                .ifPresent(job -> new Planning(visit.book(), visit.messages())
                        .change(job)
                        .ifPresentOrElse(
                                change -> visit.show(
                                        "changes",
                                        Map.of(
                                                "job",
                                                job,
                                                "change",
                                                change,
                                                "words",
                                                new ChangeWords(visit.messages()))),
                                () -> visit.refuse(HttpStatus.NOT_FOUND)));
    }

    void begin(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            if (Texts.OF_A_JOB.stream()
                    .allMatch(name -> JobStep.in(name).orElseThrow().isDone(job))) {
                background().plan(job.id(), visit.author(), visit.messages().locale());
            }
            visit.go("/jobs/" + job.id() + "/plan");
        });
    }

    void stop(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            background().stop(job.id());
            visit.go("/jobs/" + job.id() + "/plan");
        });
    }

    /** How far it is, for the page to ask again and again; no content when the page should be looked at anew. */
    void progress(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Optional<TaskProgress> progress = background()
                    .find(job.id())
                    .filter(told -> !told.isFailed() && job.get("run").equals(visit.query("run")));
            if (progress.isPresent()) {
                visit.show("progress", Map.of("progress", progress.orElseThrow()));
            } else {
                context.status(HttpStatus.NO_CONTENT);
            }
        });
    }

    private Background background() {
        return shop.background().orElseThrow(() -> new IllegalStateException("the book is locked"));
    }

    /**
     * A paper as it was written: a page of its own that runs nothing and fetches nothing. The codes of the bay sheet lead to where
     * whoever looks at it found it, and a page can be had as a PDF for a printer.
     */
    void paper(Context context) {
        Visit visit = Visit.of(context);
        String name = visit.part("paper");
        JobPages.job(visit).ifPresent(job -> {
            Planning planning = new Planning(visit.book(), visit.messages());
            if (name.endsWith(PDF)) {
                Sheet sheet = Sheet.of(visit.query("sheet")).orElse(Sheet.A4);
                String page = name.substring(0, name.length() - PDF.length()) + HTML;
                planning.paper(job, page)
                        .ifPresentOrElse(
                                written -> print(context, name, Pdf.of(page(visit, job, page, written), sheet)),
                                () -> visit.refuse(HttpStatus.NOT_FOUND));
                return;
            }
            Optional<byte[]> paper = planning.paper(job, name);
            if (paper.isEmpty()) {
                visit.refuse(HttpStatus.NOT_FOUND);
            } else if (name.endsWith(HTML)) {
                context.header("Content-Security-Policy", PAPER_POLICY);
                context.contentType("text/html; charset=utf-8");
                if (COMPLETED.contains(name)) {
                    context.result(page(visit, job, name, paper.orElseThrow()).html());
                } else {
                    context.result(paper.orElseThrow());
                }
            } else {
                CheckInPages.plain(context, paper.orElseThrow());
            }
        });
    }

    /**
     * A kept page with what is known only now: where it names steps, codes that open them by the address that this request came by; in
     * the record, the pictures of the joints.
     */
    private Page page(Visit visit, Card job, String name, byte[] written) {
        Page page = Page.read(new String(written, StandardCharsets.UTF_8));
        if (name.equals(RECORD)) {
            List<Photo> photos = bays.of(job, visit.book())
                    .map(bay -> new JointPictures(visit.book(), job.id()).photos(bay, visit.messages()))
                    .orElse(List.of());
            return WarrantyRecord.with(page, photos);
        }
        return StepCodes.on(
                page,
                new ShopAddress(listen.base(visit.context().host()))
                        .job(job.id().value()));
    }

    private static void print(Context context, String name, byte[] pdf) {
        context.header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .contentType("application/pdf")
                .result(pdf);
    }
}
