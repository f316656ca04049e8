package org.loomproof.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;
import org.loomproof.workshop.prover.FaultWatch;

/**
 * Waits for a long search until the person at the keyboard interrupts it; then the search ends, and the process only after
 * what was found so far has been shown.
 */
final class Patience implements FaultWatch, AutoCloseable {

    /** What was found is told within this, or the interrupt has its way. */
    private static final long MOST_SECONDS_TO_TELL = 30;

    private final AtomicBoolean enough = new AtomicBoolean();
    private final CountDownLatch told = new CountDownLatch(1);
    private final BiConsumer<Integer, Integer> progress;
    private final Thread onInterrupt = new Thread(this::interrupted, "interrupted");

    /** @param progress hears how many of how many were looked at */
    Patience(BiConsumer<Integer, Integer> progress) {
        this.progress = progress;
        Runtime.getRuntime().addShutdownHook(onInterrupt);
    }

    private void interrupted() {
        enough.set(true);
        try {
            boolean done = told.await(MOST_SECONDS_TO_TELL, TimeUnit.SECONDS);
            enough.set(done);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void lookedAt(int done, int all) {
        progress.accept(done, all);
    }

    @Override
    public boolean isEnough() {
        return enough.get();
    }

    /** Everything has been told. */
    @Override
    public void close() {
        told.countDown();
        if (!enough.get()) {
            Runtime.getRuntime().removeShutdownHook(onInterrupt);
        }
    }
}
