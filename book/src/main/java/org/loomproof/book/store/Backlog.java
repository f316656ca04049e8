package org.loomproof.book.store;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.exceptions.TaskInstanceException;
import com.github.kagkarlsson.scheduler.logging.LogLevel;
import com.github.kagkarlsson.scheduler.task.Execution;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionContext;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.Priority;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import com.github.kagkarlsson.scheduler.task.TaskInstanceId;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.work.Task;
import org.loomproof.book.work.TaskProgress;
import org.loomproof.book.work.Worker;

/**
 * The tasks of an open book. They lie in the book's own database, so that every server of the book takes its share, none is done by
 * two at once, and what a dead server had in hand another one takes up. While no server has the book unlocked they wait.
 */
public final class Backlog implements AutoCloseable {

    private static final String TABLE = "background_task";

    /**
     * How quick servers are.
     *
     * @param looking how often one looks for tasks that another one was given
     * @param heartbeat one that was not heard of for four of these is taken for dead
     * @param untilTriedAgain how long a task rests after something went wrong with it
     */
    public record Pace(Duration looking, Duration heartbeat, Duration untilTriedAgain) {
        /** A server that stops for some seconds is not dead. */
        public static final Pace USUAL = new Pace(Duration.ofSeconds(2), Duration.ofSeconds(5), Duration.ofSeconds(10));
    }

    private static final int MISSED_HEARTBEATS = 4;
    private static final int TRIES = 3;

    /** Tasks to look ahead to, for each at work: were it more, what is urgent would stand behind those. */
    private static final double AHEAD = 1.0;

    private static final double ASK_AGAIN_BELOW = 0.5;

    /** Somebody sits before the page and waits, or nobody does: the greater goes first, and of equals whoever asked first. */
    private static final int SOMEBODY_WAITS = Priority.HIGH;

    private static final int NOBODY_WAITS = Priority.LOW;

    /** A proof looks up about once a second. */
    private static final Duration UNTIL_LEFT = Duration.ofSeconds(15);

    private final Pace pace;
    private final ProgressRows progress;
    private final Map<String, OneTimeTask<String>> kinds;
    private final Scheduler scheduler;

    private Backlog(
            OpenBook book, Map<String, Worker> workers, LocalTime nightly, Consumer<Backlog> everyNight, Pace pace) {
        this.pace = pace;
        this.progress = new ProgressRows(book.database().jdbi());
        this.kinds = workers.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> ofKind(entry.getKey(), entry.getValue())));
        RecurringTask<Void> night = Tasks.recurring("nightly", Schedules.daily(nightly))
                .execute((instance, context) -> everyNight.accept(this));
        this.scheduler = Scheduler.create(
                        book.database().source(), kinds.values().toArray(OneTimeTask[]::new))
                .startTasks(night)
                .tableName(TABLE)
                .schedulerName(new SchedulerName.Fixed(CardId.fresh().value()))
                .jdbcCustomization(book.database().scheduling())
                .serializer(new PlainText())
                .enablePriority()
                .pollUsingFetchAndLockOnExecute(ASK_AGAIN_BELOW, AHEAD)
                .threads(1)
                .pollingInterval(pace.looking())
                .heartbeatInterval(pace.heartbeat())
                .missedHeartbeatsLimit(MISSED_HEARTBEATS)
                .shutdownMaxWait(UNTIL_LEFT)
                .failureLogging(LogLevel.OFF, false) // a task that was stopped is no failure; see failed()
                .enableImmediateExecution()
                .build();
    }

    /**
     * Begins to do the tasks of a book, until it is closed.
     *
     * @param workers who does them, by kind
     * @param nightly a time of day
     * @param everyNight is called at that time, by one of the servers
     */
    public static Backlog start(
            OpenBook book, Map<String, Worker> workers, LocalTime nightly, Consumer<Backlog> everyNight, Pace pace) {
        Backlog backlog = new Backlog(book, workers, nightly, everyNight, pace);
        backlog.scheduler.start();
        return backlog;
    }

    /** One that only asks for work of these kinds and does none: for a server whose book may be busy, or a program beside it. */
    public static Backlog asking(OpenBook book, List<String> kinds) {
        Worker nobody = (task, watch) -> {
            throw new IllegalStateException("never begun, never called");
        };
        return new Backlog(
                book,
                kinds.stream().collect(Collectors.toMap(Function.identity(), kind -> nobody)),
                LocalTime.MIDNIGHT,
                backlog -> {},
                Pace.USUAL);
    }

    /** Adds a task that somebody waits for; false, with nothing changed, when one of its kind about its subject is there. */
    public boolean add(Task task) {
        return add(task, SOMEBODY_WAITS);
    }

    /**
     * Adds a task that nobody waits for: those that somebody waits for go first, save that a server ends what it has in hand and may
     * have looked ahead to one more.
     */
    public boolean addBehind(Task task) {
        return add(task, NOBODY_WAITS);
    }

    private boolean add(Task task, int priority) {
        if (isThere(task.kind(), task.subject())) {
            return false;
        }
        progress.begin(task.kind(), task.subject());
        return scheduler.scheduleIfNotExists(
                kind(task.kind())
                        .instanceBuilder(task.subject())
                        .data(task.id() + " " + task.who().value() + " " + task.language())
                        .priority(priority)
                        .build(),
                Instant.now());
    }

    /** How far a task has come; nothing when there is none, and none was given up. */
    public Optional<TaskProgress> find(String kind, String subject) {
        Optional<TaskProgress> told = progress.find(kind, subject);
        if (isThere(kind, subject)) {
            // Given up and still there: it is just being taken away, and nobody can ask again before that is done.
            return Optional.of(
                    told.filter(come -> !come.isFailed()).orElse(new TaskProgress(TaskProgress.WAITING, 0, 0)));
        }
        return told.filter(TaskProgress::isFailed);
    }

    /** Has a task ended: at once while it waits, otherwise when whoever does it looks up. */
    public void stop(String kind, String subject) {
        progress.stop(kind, subject);
        try {
            scheduler.cancel(id(kind, subject));
            progress.end(kind, subject);
        } catch (TaskInstanceException e) {
            // Somebody has it in hand, and will see that it is to stop; or it has just ended.
        }
    }

    private boolean isThere(String kind, String subject) {
        return scheduler.getScheduledExecution(id(kind, subject)).isPresent();
    }

    private TaskInstanceId id(String kind, String subject) {
        return kind(kind).instanceId(subject);
    }

    private OneTimeTask<String> kind(String name) {
        OneTimeTask<String> kind = kinds.get(name);
        if (kind == null) {
            throw new IllegalArgumentException("no such work: " + name);
        }
        return kind;
    }

    private OneTimeTask<String> ofKind(String kind, Worker worker) {
        return Tasks.oneTime(kind, String.class)
                .onFailure(this::failed)
                .onDeadExecution(this::failed)
                .execute((instance, context) -> work(kind, worker, instance, context));
    }

    private void work(String kind, Worker worker, TaskInstance<String> instance, ExecutionContext context) {
        String[] data = instance.getData().split(" ", 3);
        Task task = new Task(kind, instance.getId(), new CardId(data[0]), new Author(data[1]), data[2]);
        worker.work(
                task,
                new RowWatch(progress, task, () -> context.getSchedulerState().isShuttingDown()));
        progress.end(kind, task.subject());
    }

    /** What did not end as it should: stopped, left by a server that ends, or gone wrong. */
    private void failed(ExecutionComplete complete, ExecutionOperations<String> operations) {
        Execution execution = complete.getExecution();
        String kind = execution.taskInstance.getTaskName();
        String subject = execution.taskInstance.getId();
        Optional<Throwable> cause = complete.getCause();
        if (cause.filter(RowWatch.Stopped.class::isInstance).isPresent()) {
            progress.end(kind, subject);
            operations.remove();
        } else if (cause.filter(RowWatch.ServerEnds.class::isInstance).isPresent()) {
            progress.begin(kind, subject);
            operations.reschedule(complete, Instant.now());
        } else if (execution.consecutiveFailures + 1 < TRIES) {
            log(kind, "is tried again", cause);
            operations.reschedule(
                    complete, Instant.now().plus(cause.isPresent() ? pace.untilTriedAgain() : Duration.ZERO));
        } else {
            log(kind, "is given up", cause);
            progress.fail(kind, subject);
            operations.remove();
        }
    }

    /** The kind of work and our own fault, and nothing of what it was about. */
    private static void log(String kind, String what, Optional<Throwable> cause) {
        System.getLogger(Backlog.class.getName())
                .log(System.Logger.Level.WARNING, "work of kind " + kind + " " + what, cause.orElse(null));
    }

    @Override
    public void close() {
        scheduler.stop();
    }
}
