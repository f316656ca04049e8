package org.loomproof.pages.desk;

import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.Backlog;
import org.loomproof.book.store.OpenBook;
import org.loomproof.book.work.Task;
import org.loomproof.book.work.TaskProgress;
import org.loomproof.workshop.words.Messages;

/** The long work of a shop: jobs being planned and proven, and at night every vehicle sheet with every kit; one after another on each server of the book, while it is unlocked. What is for a job goes before what is for the night. */
public final class Background implements AutoCloseable {

    private static final String PLAN = "plan";
    private static final String FAULTS = "faults";

    /** When nobody works in the shop, and few clocks are set. */
    private static final LocalTime NIGHT = LocalTime.of(3, 20);

    private final OpenBook book;
    private final Backlog backlog;

    private Background(OpenBook book, Backlog.Pace pace) {
        this.backlog = Backlog.start(
                book,
                Map.of(
                        PLAN,
                        (task, watch) -> planning(book, task).run(task, watch),
                        FAULTS,
                        (task, watch) -> planning(book, task).tryFaults(task, watch),
                        NightlyProof.TASK,
                        (task, watch) -> new NightlyProof(book, Messages.in(Locale.forLanguageTag(task.language())))
                                .run(task, watch)),
                NIGHT,
                all -> new NightlyProof(book, Messages.english())
                        .due(Author.CONSOLE)
                        .forEach(all::addBehind),
                pace);
        this.book = book;
    }

    private static Planning planning(OpenBook book, Task task) {
        return new Planning(book, Messages.in(Locale.forLanguageTag(task.language())));
    }

    /** Begins to do the work of a book. */
    static Background start(OpenBook book) {
        return new Background(book, Backlog.Pace.USUAL);
    }

    /** Has a job planned and proven; false when that is under way, and goes on with the texts that the job has by then. */
    public boolean plan(CardId job, Author who, Locale language) {
        return backlog.add(Task.asked(PLAN, job.value(), who, language.toLanguageTag()));
    }

    /** Has the faults and slips of a job's plan tried; false when that is under way. */
    public boolean tryFaults(CardId job, Author who, Locale language) {
        return backlog.add(Task.asked(FAULTS, job.value(), who, language.toLanguageTag()));
    }

    /** How far the work for a job has come; nothing when none is under way, and none was given up. */
    public Optional<TaskProgress> find(CardId job) {
        return backlog.find(PLAN, job.value()).or(() -> backlog.find(FAULTS, job.value()));
    }

    /** Has the work for a job ended; what was kept stays. */
    public void stop(CardId job) {
        backlog.stop(PLAN, job.value());
        backlog.stop(FAULTS, job.value());
    }

    /** Has every sheet proven with every kit where that is due; how many that are. What is under way is not asked for twice. */
    public int proveDue(Author who, Locale language) {
        List<Task> due = new NightlyProof(book, Messages.in(language)).due(who);
        due.forEach(backlog::addBehind);
        return due.size();
    }

    /** True while a sheet and a kit wait to be proven or are being proven. */
    public boolean isUnderWay(Fit fit) {
        return backlog.find(NightlyProof.TASK, fit.subject())
                .filter(told -> !told.isFailed())
                .isPresent();
    }

    @Override
    public void close() {
        backlog.close();
    }
}
