package org.loomproof.pages.desk;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.Saved;
import org.loomproof.book.store.Attachments;
import org.loomproof.book.store.OpenBook;
import org.loomproof.book.work.Task;
import org.loomproof.book.work.TaskWatch;
import org.loomproof.papers.Papers;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.folder.Paper;
import org.loomproof.shop.job.Answer;
import org.loomproof.shop.job.MadeJob;
import org.loomproof.shop.job.ResultJson;
import org.loomproof.shop.job.Stage;
import org.loomproof.shop.job.TextRun;
import org.loomproof.shop.job.VerdictCounts;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileReader;
import org.loomproof.workshop.plan.file.PlanFileWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.words.Messages;

/** Plans and proves a job of the book, and keeps what came out with the job: verdicts, plan, papers. */
public final class Planning {

    /** The verdicts, as JSON, among the papers. */
    private static final String RESULT = "result.json";

    /** What the faults and slips come to, among the papers once they were tried. */
    private static final String FAULTS = "faults.json";

    /** Behind the name of a run whose papers know the faults. */
    private static final String TRIED = ".tried";

    private static final int SUM_BYTES = 8;

    private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(1);

    /** What is kept among the papers and is none. */
    private static final Set<String> NO_PAPERS = Set.of(RESULT, FAULTS);

    private final OpenBook book;
    private final Messages messages;

    public Planning(OpenBook book, Messages messages) {
        this.book = book;
        this.messages = messages;
    }

    /**
     * Does the whole of it for the job as it is now: first the plan with its verdicts, which are kept at once, then every fault and
     * slip, which the test order needs. Taken up again by another server it keeps nothing twice. Where the texts were changed
     * meanwhile nothing is kept, since a verdict about other wires than those on the sheet would be worse than none, and it begins
     * anew with those.
     */
    public void run(Task task, TaskWatch watch) {
        Optional<Card> job = job(task);
        String run = task.id().value();
        while (job.isPresent()) {
            Card asked = job.orElseThrow();
            run(asked, run, task, watch);
            job = job(task).filter(now -> !isOfTheSameTexts(now, asked));
            run = CardId.fresh().value();
        }
    }

    private Optional<Card> job(Task task) {
        return CardId.in(task.subject()).flatMap(book.cards()::find);
    }

    private void run(Card job, String name, Task task, TaskWatch watch) {
        Consumer<Stage> told = stage -> watch.stage(stage.name().toLowerCase(Locale.ROOT));
        TextRun run = new TextRun(messages);
        AtomicInteger candidates = new AtomicInteger();
        Checked<MadeJob> made = job.get(Texts.BY_HAND).isBlank()
                ? run.make(text(job, "sheet"), text(job, "kit"), text(job, "order"), Prices.texts(book), told, () -> {
                    watch.goOn();
                    watch.counted(candidates.incrementAndGet(), 0);
                })
                : run.makeByHand(byHand(run, job, job.get(Texts.BY_HAND)), Prices.texts(book), told);
        if (made instanceof Checked.Good<MadeJob>(MadeJob good)) {
            watch.goOn();
            keep(job, task, name, "job.proven", good);
            MadeJob tried = run.tried(good, told, new TaskFaults(watch, overtaken(job)));
            watch.goOn();
            keep(job, task, name + TRIED, "job.tried", tried);
        }
    }

    /**
     * Tries the faults and slips of the plan that a job has, and keeps what comes out beside its papers: for a run that was
     * stopped when it had its verdicts. Where the job has another plan by then nothing is kept.
     */
    public void tryFaults(Task task, TaskWatch watch) {
        Optional<Card> found = job(task);
        Optional<PlanFile> file = found.flatMap(this::planFile);
        if (file.isEmpty() || faults(found.orElseThrow()).isPresent()) {
            return;
        }
        watch.stage(Stage.TRYING_FAULTS.name().toLowerCase(Locale.ROOT));
        Brief brief = file.orElseThrow().given().brief();
        Plan plan = file.orElseThrow().plan();
        FaultProof faults = FaultProver.prove(brief, plan, new TaskFaults(watch, () -> false));
        watch.goOn();
        keep(found.orElseThrow(), task, found.orElseThrow().get("run"), KeptFaults.of(brief, plan, faults, messages));
    }

    private void keep(Card job, Task task, String run, KeptFaults faults) {
        book.attachments().add(job.id(), task.who(), label(run, FAULTS), faults.json());
    }

    /** Whether a job's texts are others by now; looked up once a second. */
    private BooleanSupplier overtaken(Card asked) {
        AtomicLong looked = new AtomicLong(System.nanoTime());
        return () -> {
            long now = System.nanoTime();
            if (now - looked.get() < BETWEEN_LOOKS.toNanos()) {
                return false;
            }
            looked.set(now);
            return book.cards()
                    .find(asked.id())
                    .filter(job -> isOfTheSameTexts(job, asked))
                    .isEmpty();
        };
    }

    /**
     * Faults tell of themselves as tasks do.
     *
     * @param overtaken whether they are nobody's any more
     */
    private record TaskFaults(TaskWatch watch, BooleanSupplier overtaken) implements FaultWatch {
        @Override
        public void lookedAt(int done, int all) {
            watch.counted(done, all);
        }

        @Override
        public boolean isEnough() {
            return watch.isOver() || overtaken.getAsBoolean();
        }
    }

    /** A plan that says only what was decided, for the texts of a job. */
    static Checked<PlanFile> byHand(TextRun run, Card job, String decided) {
        return run.byHand(
                new SourceText(Papers.PLAN, decided), text(job, "sheet"), text(job, "kit"), text(job, "order"));
    }

    /** The plan of a job to be changed by hand: as it was changed last, else as it was planned last; nothing while it has none. */
    public Optional<String> decided(Card job) {
        return job.entries()
                .find(Texts.BY_HAND)
                .or(() -> Runs.lastPlanned(job)
                        .flatMap(run -> plan(job, run))
                        .map(text -> new PlanFileWriter(messages).writeDecided(file(text))));
    }

    /** The same with other figures; nothing while the plan cannot be read. */
    public Optional<String> decided(Card job, Map<String, Map<String, String>> figures) {
        return decided(job)
                .flatMap(text -> decidedFile(job, text))
                .map(file -> new PlanFileWriter(messages).writeDecided(file, figures));
    }

    /** What a decided text says; nothing while it cannot be read. */
    public Optional<PlanFile> decidedFile(Card job, String decided) {
        return switch (byHand(new TextRun(messages), job, decided)) {
            case Checked.Good<PlanFile>(PlanFile file) -> Optional.of(file);
            case Checked.Bad<PlanFile> ignored -> Optional.empty();
        };
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
        made.material()
                .faults()
                .ifPresent(
                        faults -> keep(asked, task, run, KeptFaults.of(made.brief(), made.plan(), faults, messages)));
        Saved saved = book.cards()
                .amend(
                        found.orElseThrow(),
                        task.who(),
                        what,
                        now -> isOfTheSameTexts(now, asked) ? changes(now, run, made) : Map.of());
        if (saved instanceof Saved.Done(Card job) && job.get(Runs.LATEST).equals(run)) {
            Predicate<String> nobodys = Runs.nobodys(job);
            book.attachments().drop(job.id(), paper -> nobodys.test(paper.label()));
        }
    }

    private static boolean isOfTheSameTexts(Card now, Card asked) {
        return Texts.BEHIND_A_VERDICT.stream().allMatch(name -> now.get(name).equals(asked.get(name)));
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
        changes.put("sum", ShopAddress.sum(made.brief().order().job()));
        changes.put("kit-name", made.brief().kit().name());
        changes.put("parts", Integer.toString(made.plan().parts().size()));
        return JobStep.withStage(job, changes);
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

    /** The names of the papers of a job's latest run, sorted. */
    public List<String> papers(Card job) {
        return kept(job).stream()
                .map(label -> label.label().substring(label.label().indexOf('/') + 1))
                .filter(name -> !NO_PAPERS.contains(name))
                .sorted()
                .toList();
    }

    private List<Attachments.Label> kept(Card job) {
        String run = job.get(Runs.LATEST);
        return run.isEmpty()
                ? List.of()
                : book.attachments().of(job.id()).stream()
                        .filter(label -> label.label().startsWith(run + "/"))
                        .toList();
    }

    /** One paper of a job's latest run. */
    public Optional<byte[]> paper(Card job, String name) {
        return NO_PAPERS.contains(name) ? Optional.empty() : kept(job, name);
    }

    /** The verdicts of a job's latest run. */
    public Optional<Verdicts> verdicts(Card job) {
        return kept(job, RESULT).map(Verdicts::in);
    }

    /** What the faults and slips of a job's plan come to; nothing while they were not tried. */
    public Optional<KeptFaults> faults(Card job) {
        return kept(job, FAULTS).map(KeptFaults::in);
    }

    /** A sum of a job's plan: another plan has another, and the same plan made again has the same. */
    public Optional<String> planSum(Card job) {
        return kept(job, Papers.PLAN).map(Planning::sum);
    }

    private static String sum(byte[] bytes) {
        try {
            byte[] whole = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(whole, 0, SUM_BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** When the plan of a job was proven; nothing while it has none. */
    public Optional<Instant> provenAt(Card job) {
        String first = job.get(Runs.LATEST).replace(TRIED, "");
        return first.isEmpty()
                ? Optional.empty()
                : book.cards().events(job.id()).stream()
                        .filter(event ->
                                event.changes().getOrDefault(Runs.LATEST, "").startsWith(first))
                        .map(CardEvent::at)
                        .min(Comparator.naturalOrder());
    }

    /** The plan of a job, with what it was made from; nothing while it has none. */
    public Optional<PlanFile> planFile(Card job) {
        return plan(job, job.get(Runs.LATEST)).map(this::file);
    }

    private PlanFile file(SourceText text) {
        return switch (new PlanFileReader(new TextRun(messages).briefs(), messages).read(text)) {
            case Checked.Good<PlanFile>(PlanFile file) -> file;
            case Checked.Bad<PlanFile>(var problems) ->
                throw new IllegalStateException("a plan of our own cannot be read: " + problems.size() + " problems");
        };
    }

    private Optional<byte[]> kept(Card job, String name) {
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
