package org.loomproof.network.time;

import org.loomproof.network.solve.CompanionSolver;

/** The current of a coil: di/dt = (v - R i) / L, so i = (start + a v) / (1 + a R) with a = seconds / L. */
final class CoilStore extends Store {
    /** Coils that carry less than this are of no account in an error. */
    private static final double FLOOR_AMPS = 1e-3;

    /** Beside a coil whose current is held, so that one with nowhere to go shows as an absurd voltage. */
    private static final double LEAK_SIEMENS = 1e-12;

    final double henries;
    double ohms;

    CoilStore(int branch, double ohms, double henries) {
        super(branch, FLOOR_AMPS);
        this.ohms = ohms;
        this.henries = henries;
    }

    @Override
    void stand(CompanionSolver solver, double seconds, double start) {
        if (solver.counts(branch)) {
            double a = seconds / henries;
            double share = 1 / (1 + a * ohms);
            solver.stand(branch, seconds == 0 ? LEAK_SIEMENS : a * share, start * share);
        }
    }

    @Override
    boolean read(CompanionSolver solver, double seconds, double start) {
        if (!solver.counts(branch)) {
            foundValue = 0;
            foundRate = 0;
            return false;
        }
        double volts = solver.branchVolts(branch);
        double a = seconds / henries;
        foundValue = (start + a * volts) / (1 + a * ohms);
        foundRate = (volts - ohms * foundValue) / henries;
        return false;
    }

    @Override
    double joules() {
        return 0.5 * henries * value * value;
    }
}
