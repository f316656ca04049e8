package org.loomproof.book.store;

import java.io.Serial;
import java.time.Duration;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import org.loomproof.book.work.Task;
import org.loomproof.book.work.TaskProgress;
import org.loomproof.book.work.TaskWatch;

/** Writes progress to its row and reads from it whether to stop, neither more often than people look. */
final class RowWatch implements TaskWatch {

    /** Somebody stopped the task. */
    static final class Stopped extends CancellationException {
        @Serial
        private static final long serialVersionUID = 1L;
    }

    /** The server ends, and the task waits for another one. */
    static final class ServerEnds extends CancellationException {
        @Serial
        private static final long serialVersionUID = 1L;
    }

    private static final long BETWEEN_LOOKS = Duration.ofMillis(400).toNanos();

    private final ProgressRows rows;
    private final Task task;
    private final BooleanSupplier serverEnds;
    private final AtomicLong looked = new AtomicLong(System.nanoTime() - BETWEEN_LOOKS);
    private final AtomicLong written = new AtomicLong(System.nanoTime() - BETWEEN_LOOKS);
    private volatile String stage = TaskProgress.WAITING;
    private volatile boolean stopping;

    RowWatch(ProgressRows rows, Task task, BooleanSupplier serverEnds) {
        this.rows = rows;
        this.task = task;
        this.serverEnds = serverEnds;
    }

    @Override
    public void stage(String name) {
        stage = name;
        rows.write(task.kind(), task.subject(), new TaskProgress(name, 0, 0));
    }

    @Override
    public void counted(int done, int all) {
        if (isTime(written)) {
            rows.write(task.kind(), task.subject(), new TaskProgress(stage, done, all));
        }
    }

    @Override
    public boolean isOver() {
        if (!stopping && isTime(looked)) {
            stopping = rows.isStopping(task.kind(), task.subject());
        }
        return stopping || serverEnds.getAsBoolean();
    }

    @Override
    public void goOn() {
        if (isOver()) {
            throw stopping ? new Stopped() : new ServerEnds();
        }
    }

    /** True for one thread, once in a while. */
    private static boolean isTime(AtomicLong last) {
        long before = last.get();
        long now = System.nanoTime();
        return now - before >= BETWEEN_LOOKS && last.compareAndSet(before, now);
    }
}
