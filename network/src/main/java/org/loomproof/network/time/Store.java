package org.loomproof.network.time;

import org.loomproof.network.solve.CompanionSolver;

/**
 * One number that lasts: y with dy/dt = f. A stage of a step asks for y = start + seconds f(y); for the time of its solution
 * the branch stands for the companion that says the same. With {@code seconds} zero, y is frozen and f is what is asked for.
 */
abstract sealed class Store permits CoilStore, CapacitorStore, FilamentStore, FuseStore {
    final int branch;

    /** y and f where the step begins, at its inner point and at its end. */
    double value;

    double rate;
    double innerValue;
    double innerRate;
    double endValue;
    double endRate;

    /** What the last stage found. */
    double foundValue;

    double foundRate;

    /** The largest size y has had, at least a floor: what errors are measured by. */
    double scale;

    private final double floor;

    Store(int branch, double floor) {
        this.branch = branch;
        this.floor = floor;
    }

    /** Begins a run at this value. */
    final void begin(double start) {
        value = start;
        rate = 0;
        scale = Math.max(floor, Math.abs(start));
    }

    /** The step is taken: its end is where the next begins. */
    final void take() {
        value = endValue;
        rate = endRate;
        scale = Math.max(scale, Math.abs(value));
    }

    /** Puts the companion in the branch's place. */
    abstract void stand(CompanionSolver solver, double seconds, double start);

    /**
     * Reads what the solution found.
     *
     * @return whether the companion must be put anew and the network be solved again
     */
    abstract boolean read(CompanionSolver solver, double seconds, double start);

    /** Energy held, joules, as far as it can be given back to the network. */
    abstract double joules();
}
