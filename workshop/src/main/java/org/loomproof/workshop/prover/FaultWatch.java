package org.loomproof.workshop.prover;

/** Somebody who waits for the faults of a plan to be looked at: hears how far it is, and may say that it is enough. */
public interface FaultWatch {

    /** Somebody who waits for the end. */
    FaultWatch PATIENT = new FaultWatch() {
        @Override
        public void lookedAt(int done, int all) {}

        @Override
        public boolean isEnough() {
            return false;
        }
    };

    /** Called after each that was looked at, from any thread. */
    void lookedAt(int done, int all);

    /** True when nothing more is to be looked at; what was found until then is kept. */
    boolean isEnough();
}
