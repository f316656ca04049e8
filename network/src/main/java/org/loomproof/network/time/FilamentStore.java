package org.loomproof.network.time;

import org.loomproof.network.law.FilamentHeat;
import org.loomproof.network.solve.CompanionSolver;

/**
 * The temperature of a filament. It moves slowly against what it is wired to, so the branch stands for the resistance at a
 * temperature guessed, the temperature is found from the voltage, and both again until they agree.
 */
final class FilamentStore extends Store {
    /** Temperature to which guess and finding agree, as a share of the rated one. */
    private static final double AGREED_SHARE = 1e-7;

    final FilamentHeat heat;
    private double guess;

    FilamentStore(int branch, FilamentHeat heat) {
        super(branch, 1);
        this.heat = heat;
    }

    @Override
    void stand(CompanionSolver solver, double seconds, double start) {
        // Guessed from the rate last known. A stage begins anew with each start.
        guess = seconds == 0 ? start : Math.max(heat.coldShare(), start + seconds * foundRate);
        put(solver);
    }

    private void put(CompanionSolver solver) {
        if (solver.counts(branch)) {
            solver.stand(branch, heat.siemens(guess), 0);
        }
    }

    @Override
    boolean read(CompanionSolver solver, double seconds, double start) {
        double volts = solver.counts(branch) ? solver.branchVolts(branch) : 0;
        foundValue = seconds == 0 ? start : heat.implicitShare(start, seconds, volts);
        foundRate = heat.rate(foundValue, volts);
        if (Math.abs(foundValue - guess) <= AGREED_SHARE) {
            return false;
        }
        guess = foundValue;
        put(solver);
        return true;
    }

    /** Heat does not come back as current. */
    @Override
    double joules() {
        return 0;
    }
}
