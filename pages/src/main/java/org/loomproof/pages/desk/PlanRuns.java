package org.loomproof.pages.desk;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import org.loomproof.book.card.CardId;
import org.loomproof.shop.job.Stage;

/** Plans being proven in the background: one a job, one after another on this machine. */
public final class PlanRuns implements AutoCloseable {

    /**
     * How far one has come.
     *
     * @param stage what is being done; nothing while it waits for its turn
     * @param proven how many candidates were taken up so far
     */
    public record Progress(Optional<Stage> stage, int proven) {}

    /** What a run is given to tell how far it is, and to be told that nobody waits any more. */
    public interface Watch extends Consumer<Stage> {
        /** Counts another candidate. Throws {@link CancellationException} when the run was stopped. */
        void beforeProof();
    }

    private static final class Run implements Watch {
        private volatile Progress progress = new Progress(Optional.empty(), 0);
        private volatile boolean stopped;

        @Override
        public void accept(Stage stage) {
            progress = new Progress(Optional.of(stage), progress.proven());
        }

        @Override
        public void beforeProof() {
            if (stopped) {
                throw new CancellationException();
            }
            progress = new Progress(progress.stage(), progress.proven() + 1);
        }
    }

    private final Map<CardId, Run> running = new ConcurrentHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(
            work -> Thread.ofPlatform().name("plans").daemon().unstarted(work));

    /** Begins work for a job; false when some is under way. */
    public boolean begin(CardId job, Consumer<Watch> work) {
        Run run = new Run();
        if (running.putIfAbsent(job, run) != null) {
            return false;
        }
        worker.execute(() -> {
            try {
                work.accept(run);
            } catch (CancellationException e) {
                // Nobody waits for it any more; the job is as it was.
            } finally {
                running.remove(job);
            }
        });
        return true;
    }

    /** How far the work for a job has come; nothing when none is under way. */
    public Optional<Progress> find(CardId job) {
        return Optional.ofNullable(running.get(job)).map(run -> run.progress);
    }

    /** Has the work for a job ended before its next proof. */
    public void stop(CardId job) {
        Optional.ofNullable(running.get(job)).ifPresent(run -> run.stopped = true);
    }

    @Override
    public void close() {
        running.values().forEach(run -> run.stopped = true);
        worker.shutdown();
    }
}
