package org.loomproof.network.time;

import java.util.List;
import org.loomproof.network.law.Term;
import org.loomproof.network.solve.CompanionSolver;

/** The voltages of capacitors: du/dt = i / C, so i = (v - start) / (Rs + seconds / C). */
final class CapacitorStores extends StoreKind {
    /** Capacitors that hold less than this are of no account in an error. */
    private static final double FLOOR_VOLTS = 0.1;

    private final double[] farads;
    private final double[] seriesOhms;

    /** Companion conductance of each for a stage of {@link #siemensSeconds}. */
    private final double[] siemens;

    private double siemensSeconds = Double.NaN;

    CapacitorStores(CompanionSolver solver, Method method, List<Integer> branches) {
        super(solver, method, branches, FLOOR_VOLTS);
        farads = new double[count];
        seriesOhms = new double[count];
        siemens = new double[count];
        for (int k = 0; k < count; k++) {
            Term.Capacitance capacitance = (Term.Capacitance) solver.term(branch[k]);
            farads[k] = capacitance.farads();
            seriesOhms[k] = capacitance.seriesOhms();
        }
    }

    private void siemens(double seconds) {
        if (seconds != siemensSeconds) {
            for (int k = 0; k < count; k++) {
                siemens[k] = 1 / (seriesOhms[k] + seconds / farads[k]);
            }
            siemensSeconds = seconds;
        }
    }

    @Override
    void stand(double seconds) {
        siemens(seconds);
        for (int k = 0; k < count; k++) {
            if (counts[k]) {
                solver.stand(branch[k], siemens[k], -siemens[k] * start[k]);
            }
        }
    }

    @Override
    boolean read(double seconds) {
        for (int k = 0; k < count; k++) {
            foundRate[k] = counts[k] ? siemens[k] * (volts(k) - start[k]) / farads[k] : 0;
            found[k] = start[k] + seconds * foundRate[k];
        }
        return false;
    }

    @Override
    double joules(int k) {
        return 0.5 * farads[k] * value[k] * value[k];
    }
}
