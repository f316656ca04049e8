package org.loomproof.pages.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.Saved;
import org.loomproof.book.store.Attachments;
import org.loomproof.book.store.OpenBook;
import org.loomproof.papers.folder.Paper;
import org.loomproof.shop.job.Answer;
import org.loomproof.shop.job.MadeJob;
import org.loomproof.shop.job.ResultJson;
import org.loomproof.shop.job.TextRun;
import org.loomproof.shop.job.VerdictCounts;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
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
     * Does the whole of it for the job as it is now. Where the job was changed meanwhile nothing is kept: a verdict about other
     * wires than those on the sheet would be worse than none.
     */
    public void run(CardId id, Author who, Optional<String> prices, PlanRuns.Watch watch) {
        Optional<Card> found = book.cards().find(id);
        if (found.isEmpty()) {
            return;
        }
        Card job = found.orElseThrow();
        Checked<MadeJob> made = new TextRun(messages)
                .make(
                        text(job, "sheet"),
                        text(job, "kit"),
                        text(job, "order"),
                        prices.map(list -> new SourceText("prices.csv", list)),
                        watch,
                        watch::beforeProof);
        if (made instanceof Checked.Good<MadeJob>(MadeJob good)) {
            keep(job, who, good);
        }
    }

    /** A text of a job, under the name its problems are told by. */
    public static SourceText text(Card job, String name) {
        return new SourceText(name + ".yaml", job.get(name));
    }

    private void keep(Card job, Author who, MadeJob made) {
        String run = CardId.fresh().value();
        VerdictCounts counts = VerdictCounts.of(made.proof());
        Map<String, String> changes = new HashMap<>();
        changes.put("run", run);
        changes.put("verdict", Answer.of(made.plan(), made.proof()).name().toLowerCase(Locale.ROOT));
        changes.put("holds", Integer.toString(counts.holds()));
        changes.put("broken", Integer.toString(counts.broken()));
        changes.put("open", Integer.toString(counts.open()));
        changes.put("kit-name", made.brief().kit().name());
        changes.put("parts", Integer.toString(made.plan().parts().size()));
        Card after = new Card(
                job.id(),
                job.kind(),
                job.customer(),
                job.version(),
                job.entries().with(changes));
        changes.put("stage", JobStep.stage(after));
        // Papers first: a job never names a run whose papers are missing. Those of a run that comes too late are named
        // by nobody.
        List<Paper> papers = made.papers();
        papers.forEach(paper -> book.attachments().add(job.id(), who, label(run, paper.name()), paper.bytes()));
        String result = new ResultJson(messages)
                .ofResult(
                        made.brief().kit(),
                        made.plan(),
                        made.proof(),
                        made.search(),
                        "",
                        papers.stream().map(Paper::name).toList());
        book.attachments().add(job.id(), who, label(run, RESULT), new Paper(RESULT, result).bytes());
        Saved saved = book.cards().change(job.id(), job.version(), who, "job.proven", changes);
        if (saved instanceof Saved.Overtaken) {
            System.getLogger(Planning.class.getName())
                    .log(
                            System.Logger.Level.INFO,
                            "a job was changed while it was being proven; what came out is not kept");
        }
    }

    /** The papers of a job's latest run, by name. */
    public List<Attachments.Label> papers(Card job) {
        String run = job.get("run");
        return run.isEmpty()
                ? List.of()
                : book.attachments().of(job.id()).stream()
                        .filter(label -> label.label().startsWith(run + "/"))
                        .toList();
    }

    /** One paper of a job's latest run. */
    public Optional<byte[]> paper(Card job, String name) {
        return papers(job).stream()
                .filter(label -> label.label().equals(label(job.get("run"), name)))
                .findFirst()
                .flatMap(label -> book.attachments().open(job.id(), label.id()));
    }

    private static String label(String run, String name) {
        return run + "/" + name;
    }
}
