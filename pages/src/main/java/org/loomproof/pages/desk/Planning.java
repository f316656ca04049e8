package org.loomproof.pages.desk;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.Saved;
import org.loomproof.book.store.Attachments;
import org.loomproof.book.store.OpenBook;
import org.loomproof.book.work.Task;
import org.loomproof.book.work.TaskWatch;
import org.loomproof.papers.Papers;
import org.loomproof.papers.folder.Paper;
import org.loomproof.shop.job.Answer;
import org.loomproof.shop.job.MadeJob;
import org.loomproof.shop.job.ResultJson;
import org.loomproof.shop.job.Stage;
import org.loomproof.shop.job.TextRun;
import org.loomproof.shop.job.VerdictCounts;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.words.Messages;

/** Plans and proves a job of the book, and keeps what came out with the job: verdicts, plan, papers. */
public final class Planning {

    /** The verdicts, as JSON, among the papers. */
    public static final String RESULT = "result.json";

    private final OpenBook book;
    private final Messages messages;

    public Planning(OpenBook book, Messages messages) {
        this.book = book;
        this.messages = messages;
    }

    /**
     * Does the whole of it for the job as it is now: first the plan with its verdicts, which are kept at once, then every fault and
     * slip, which the test order needs. Taken up again by another server it keeps nothing twice. Where the texts were changed
     * meanwhile nothing is kept: a verdict about other wires than those on the sheet would be worse than none.
     */
    public void run(Task task, TaskWatch watch) {
        Optional<Card> found = CardId.in(task.subject()).flatMap(book.cards()::find);
        if (found.isEmpty()) {
            return;
        }
        Card job = found.orElseThrow();
        Consumer<Stage> told = stage -> watch.stage(stage.name().toLowerCase(Locale.ROOT));
        TextRun run = new TextRun(messages);
        AtomicInteger candidates = new AtomicInteger();
        Checked<MadeJob> made =
                run.make(text(job, "sheet"), text(job, "kit"), text(job, "order"), Prices.texts(book), told, () -> {
                    watch.goOn();
                    watch.counted(candidates.incrementAndGet(), 0);
                });
        if (made instanceof Checked.Good<MadeJob>(MadeJob good)) {
            watch.goOn();
            keep(job, task, task.id().value(), "job.proven", good);
            MadeJob tried = run.tried(good, told, new TaskFaults(watch));
            watch.goOn();
            keep(job, task, task.id() + ".tried", "job.tried", tried);
        }
    }

    /** Faults tell of themselves as tasks do. */
    private record TaskFaults(TaskWatch watch) implements FaultWatch {
        @Override
        public void lookedAt(int done, int all) {
            watch.counted(done, all);
        }

        @Override
        public boolean isEnough() {
            return watch.isOver();
        }
    }

    /** A text of a job, under the name its problems are told by. */
    public static SourceText text(Card job, String name) {
        return new SourceText(name + ".yaml", job.get(name));
    }

    private void keep(Card asked, Task task, String run, String what, MadeJob made) {
        Optional<Card> found = book.cards().find(asked.id());
        if (found.filter(now -> isOfTheSameTexts(now, asked)).isEmpty()
                || found.orElseThrow().get("run").startsWith(run)) {
            return; // about other wires by now, or kept before the server that did so died
        }
        // Papers first: a job never names a run whose papers are missing. Those of a run that comes too late are named
        // by nobody.
        List<Paper> papers = made.papers();
        papers.forEach(
                paper -> book.attachments().add(asked.id(), task.who(), label(run, paper.name()), paper.bytes()));
        String result = new ResultJson(messages)
                .ofResult(
                        made.brief().kit(),
                        made.plan(),
                        made.proof(),
                        made.search(),
                        "",
                        papers.stream().map(Paper::name).toList());
        book.attachments().add(asked.id(), task.who(), label(run, RESULT), new Paper(RESULT, result).bytes());
        Saved saved = new Saved.Overtaken(found.orElseThrow());
        while (saved instanceof Saved.Overtaken(Card now) && isOfTheSameTexts(now, asked)) {
            saved = book.cards().change(now.id(), now.version(), task.who(), what, changes(now, run, made));
        }
        if (saved instanceof Saved.Done(Card job)) {
            book.attachments().drop(job.id(), Runs.nobodys(job));
        }
    }

    private static boolean isOfTheSameTexts(Card now, Card asked) {
        return Texts.OF_A_JOB.stream().allMatch(name -> now.get(name).equals(asked.get(name)));
    }

    private static Map<String, String> changes(Card job, String run, MadeJob made) {
        VerdictCounts counts = VerdictCounts.of(made.proof());
        Map<String, String> changes = new HashMap<>();
        changes.put(Runs.LATEST, run);
        changes.put("verdict", Answer.of(made.plan(), made.proof()).name().toLowerCase(Locale.ROOT));
        changes.put("holds", Integer.toString(counts.holds()));
        changes.put("broken", Integer.toString(counts.broken()));
        changes.put("open", Integer.toString(counts.open()));
        changes.put(Shelf.NEEDS, Shelf.needs(PickList.of(made.brief(), made.plan())));
        changes.put("kit-name", made.brief().kit().name());
        changes.put("parts", Integer.toString(made.plan().parts().size()));
        Card after = new Card(
                job.id(),
                job.kind(),
                job.customer(),
                job.version(),
                job.entries().with(changes));
        changes.put("stage", JobStep.stage(after));
        return changes;
    }

    /**
     * What changes from the plan that was carried out, or stood before, to the plan of the latest run; nothing when there are not two
     * of them.
     */
    public Optional<PlanChange> change(Card job) {
        return Runs.comparedWith(job).flatMap(before -> {
            Optional<SourceText> old = plan(job, before);
            Optional<SourceText> next = plan(job, job.get(Runs.LATEST));
            return old.isEmpty() || next.isEmpty() ? Optional.empty() : change(old.orElseThrow(), next.orElseThrow());
        });
    }

    /** A plan kept by a program of another time may be one that this program cannot read; then nobody can say what changes. */
    private Optional<PlanChange> change(SourceText old, SourceText next) {
        return switch (new TextRun(messages).change(old, next, Prices.list(book))) {
            case Checked.Good<PlanChange>(PlanChange change) -> Optional.of(change);
            case Checked.Bad<PlanChange> ignored -> Optional.empty();
        };
    }

    private Optional<SourceText> plan(Card job, String run) {
        return paper(job, run, Papers.PLAN)
                .map(bytes -> new SourceText(Papers.PLAN, new String(bytes, StandardCharsets.UTF_8)));
    }

    /** The papers of a job's latest run, by name. */
    public List<Attachments.Label> papers(Card job) {
        String run = job.get(Runs.LATEST);
        return run.isEmpty()
                ? List.of()
                : book.attachments().of(job.id()).stream()
                        .filter(label -> label.label().startsWith(run + "/"))
                        .toList();
    }

    /** One paper of a job's latest run. */
    public Optional<byte[]> paper(Card job, String name) {
        return paper(job, job.get(Runs.LATEST), name);
    }

    /** One paper of a run that the job names. */
    public Optional<byte[]> paper(Card job, String run, String name) {
        return book.attachments().of(job.id()).stream()
                .filter(label -> label.label().equals(label(run, name)))
                .findFirst()
                .flatMap(label -> book.attachments().open(job.id(), label.id()));
    }

    private static String label(String run, String name) {
        return run + "/" + name;
    }
}
