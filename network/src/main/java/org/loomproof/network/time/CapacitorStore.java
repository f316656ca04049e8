package org.loomproof.network.time;

import org.loomproof.network.solve.CompanionSolver;

/** The voltage of a capacitor: du/dt = i / C, so i = (v - start) / (Rs + seconds / C). */
final class CapacitorStore extends Store {
    /** Capacitors that hold less than this are of no account in an error. */
    private static final double FLOOR_VOLTS = 0.1;

    private final double farads;
    private final double seriesOhms;

    CapacitorStore(int branch, double farads, double seriesOhms) {
        super(branch, FLOOR_VOLTS);
        this.farads = farads;
        this.seriesOhms = seriesOhms;
    }

    private double siemens(double seconds) {
        return 1 / (seriesOhms + seconds / farads);
    }

    @Override
    void stand(CompanionSolver solver, double seconds, double start) {
        if (solver.counts(branch)) {
            double g = siemens(seconds);
            solver.stand(branch, g, -g * start);
        }
    }

    @Override
    boolean read(CompanionSolver solver, double seconds, double start) {
        double amps = solver.counts(branch) ? siemens(seconds) * (solver.branchVolts(branch) - start) : 0;
        foundRate = amps / farads;
        foundValue = start + seconds * foundRate;
        return false;
    }

    @Override
    double joules() {
        return 0.5 * farads * value * value;
    }
}
