package org.loomproof.pages.desk;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.CardLine;
import org.loomproof.book.card.Listing;
import org.loomproof.book.store.OpenBook;
import org.loomproof.book.work.Task;
import org.loomproof.book.work.TaskWatch;
import org.loomproof.shop.job.Answer;
import org.loomproof.shop.job.JudgedJob;
import org.loomproof.shop.job.ResultJson;
import org.loomproof.shop.job.TextRun;
import org.loomproof.shop.job.VerdictCounts;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.words.Messages;

/**
 * Every vehicle sheet of the shop, planned and proven with every kit of the shop as it is usually ordered. One is proven again only
 * when its texts or the program changed. What was found is a card of its own.
 */
public final class NightlyProof {

    /** The kind of task, of which the subject names a sheet and a kit. */
    static final String TASK = "fit";

    private static final String RESULT = "result.json";
    private static final int MOST = 10_000;

    private final OpenBook book;
    private final Messages messages;

    public NightlyProof(OpenBook book, Messages messages) {
        this.book = book;
        this.messages = messages;
    }

    /** Every sheet with every kit. */
    public List<Fit> all() {
        Map<String, CardLine> found = found();
        Shared shared = new Shared(book);
        List<Card> kits = shared.all(CardKind.KIT);
        return shared.all(CardKind.SHEET).stream()
                .flatMap(sheet -> kits.stream().map(kit -> fit(sheet, kit, found)))
                .toList();
    }

    /** What was found of each pair that was ever proven, by the subject of its task. */
    private Map<String, CardLine> found() {
        Map<String, CardLine> found = new HashMap<>();
        book.cards()
                .list(Listing.all(CardKind.FIT, MOST))
                .forEach(line -> found.put(line.headline().get("pair"), line));
        return found;
    }

    private static Fit fit(Card sheet, Card kit, Map<String, CardLine> found) {
        return new Fit(sheet, kit, sum(sheet, kit), Optional.ofNullable(found.get(Fit.subject(sheet, kit))));
    }

    /** The pair that a task is about; nothing when a card of it is gone. */
    private Optional<Fit> find(String subject) {
        List<Card> pair = Stream.of(subject.split(" ", -1))
                .flatMap(id -> CardId.in(id).flatMap(book.cards()::find).stream())
                .toList();
        return pair.size() == 2 ? Optional.of(fit(pair.getFirst(), pair.getLast(), found())) : Optional.empty();
    }

    private static String sum(Card sheet, Card kit) {
        return ProgramSum.of(
                Stream.of(ProgramSum.own(), sheet.get("sheet"), kit.get("kit"), kit.get(Shared.USUAL_ORDER)));
    }

    /** The tasks that are due now. */
    List<Task> due(Author who) {
        return all().stream()
                .filter(Fit::isDue)
                .map(fit ->
                        Task.asked(TASK, fit.subject(), who, messages.locale().toLanguageTag()))
                .toList();
    }

    /** Proves one, and keeps what was found; does nothing when that was done by another server, or a card is gone. */
    void run(Task task, TaskWatch watch) {
        find(task.subject()).filter(Fit::isDue).ifPresent(fit -> keep(fit, task.who(), judged(fit, watch)));
    }

    private Map<String, String> judged(Fit fit, TaskWatch watch) {
        watch.stage("proving");
        Checked<JudgedJob> job = new TextRun(messages)
                .judged(
                        Planning.text(fit.sheet(), "sheet"),
                        Planning.text(fit.kit(), "kit"),
                        Planning.text(fit.kit(), Shared.USUAL_ORDER),
                        stage -> {},
                        watch::goOn);
        Map<String, String> found = new HashMap<>(Map.of("pair", fit.subject(), "sum", fit.sum()));
        switch (job) {
            case Checked.Bad<JudgedJob> ignored -> found.put("verdict", "unreadable");
            case Checked.Good<JudgedJob>(JudgedJob planned) -> {
                Proof proof = planned.proof();
                VerdictCounts counts = VerdictCounts.of(proof);
                found.put("verdict", Answer.of(planned.plan(), proof).name().toLowerCase(Locale.ROOT));
                found.put("holds", Integer.toString(counts.holds()));
                found.put("broken", Integer.toString(counts.broken()));
                found.put("open", Integer.toString(counts.open()));
                found.put(
                        RESULT,
                        new ResultJson(messages)
                                .ofResult(
                                        planned.brief().kit(), planned.plan(), proof, planned.search(), "", List.of()));
            }
        }
        return found;
    }

    private void keep(Fit fit, Author who, Map<String, String> found) {
        if (fit.last().isEmpty()) {
            book.cards().add(CardKind.FIT, who, "fit.proven", found);
            return;
        }
        book.cards()
                .find(fit.last().orElseThrow().id())
                .ifPresent(card -> book.cards().amend(card, who, "fit.proven", now -> found));
    }

    /** What was found of one, claim by claim; nothing where its texts could not be read. */
    public static Optional<Verdicts> verdicts(Card fit) {
        return fit.entries().find(RESULT).map(text -> Verdicts.in(text.getBytes(StandardCharsets.UTF_8)));
    }
}
