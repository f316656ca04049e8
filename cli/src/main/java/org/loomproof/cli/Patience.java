package org.loomproof.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import org.loomproof.workshop.prover.FaultWatch;

/**
 * Waits for a long search until the person at the keyboard interrupts it; then the search ends, and the process only after
 * what was found so far has been shown, with the exit code that goes with it.
 */
final class Patience implements FaultWatch, AutoCloseable {

    /** What was found is told within this, or the interrupt has its way. */
    private static final long MOST_SECONDS_TO_TELL = 30;

    /** No exit code has this value: nothing was told, so the interrupt keeps the code that it gives the process. */
    private static final int NOTHING_TOLD = -1;

    private final AtomicBoolean enough = new AtomicBoolean();
    private final AtomicInteger code = new AtomicInteger(NOTHING_TOLD);
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
            if (told.await(MOST_SECONDS_TO_TELL, TimeUnit.SECONDS) && code.get() != NOTHING_TOLD) {
                // An exit that is asked for while the machine shuts down goes unheard; only this sets the code.
                Runtime.getRuntime().halt(code.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** What was found has been shown, and the process is to end with this code. */
    int told(int exitCode) {
        code.set(exitCode);
        return exitCode;
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
            try {
                Runtime.getRuntime().removeShutdownHook(onInterrupt);
            } catch (IllegalStateException interruptedJustNow) {
                // Too late to stop anything: all has been told, and the hook ends the process with its code.
                enough.set(true);
            }
        }
    }
}
