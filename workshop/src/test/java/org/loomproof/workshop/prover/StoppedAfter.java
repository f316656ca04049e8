package org.loomproof.workshop.prover;

import java.util.concurrent.atomic.AtomicInteger;

/** Somebody who has enough once so many were looked at. */
final class StoppedAfter implements FaultWatch {

    private final int most;
    private final AtomicInteger done = new AtomicInteger();

    StoppedAfter(int most) {
        this.most = most;
    }

    @Override
    public void lookedAt(int looked, int all) {
        done.incrementAndGet();
    }

    @Override
    public boolean isEnough() {
        return done.get() >= most;
    }
}
