package org.loomproof.network.time;

import java.util.List;
import org.loomproof.network.law.Term;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.solve.CompanionSolver;

/** The currents of coils: di/dt = (v - R i) / L, so i = (start + a v) / (1 + a R) with a = seconds / L. */
final class CoilStores extends StoreKind {
    /** Coils that carry less than this are of no account in an error. */
    private static final double FLOOR_AMPS = 1e-3;

    /** Beside a coil whose current is held, so that one with nowhere to go shows as an absurd voltage. */
    private static final double LEAK_SIEMENS = 1e-12;

    private final double[] henries;
    private final double[] builtOhms;
    private final double[] ohms;

    CoilStores(CompanionSolver solver, Method method, List<Integer> branches) {
        super(solver, method, branches, FLOOR_AMPS);
        henries = new double[count];
        builtOhms = new double[count];
        for (int k = 0; k < count; k++) {
            Term.Coil coil = (Term.Coil) solver.term(branch[k]);
            henries[k] = coil.henries();
            builtOhms[k] = coil.ohms();
        }
        ohms = builtOhms.clone();
    }

    /** Takes over resistances that a setting states. */
    void configure(Setting setting) {
        for (int k = 0; k < count; k++) {
            double stated = setting.stated(solver.partOf(branch[k]));
            ohms[k] = Double.isNaN(stated) ? builtOhms[k] : stated;
        }
    }

    /** The current of a coil that has long been at a voltage. */
    double steadyAmps(int k, double volts) {
        return volts / ohms[k];
    }

    @Override
    void stand(double seconds) {
        for (int k = 0; k < count; k++) {
            if (counts[k]) {
                double a = seconds / henries[k];
                double share = 1 / (1 + a * ohms[k]);
                solver.stand(branch[k], seconds == 0 ? LEAK_SIEMENS : a * share, start[k] * share);
            }
        }
    }

    @Override
    boolean read(double seconds) {
        for (int k = 0; k < count; k++) {
            if (counts[k]) {
                double volts = volts(k);
                double a = seconds / henries[k];
                found[k] = (start[k] + a * volts) / (1 + a * ohms[k]);
                foundRate[k] = (volts - ohms[k] * found[k]) / henries[k];
            } else {
                found[k] = 0;
                foundRate[k] = 0;
            }
        }
        return false;
    }

    @Override
    double joules(int k) {
        return 0.5 * henries[k] * value[k] * value[k];
    }
}
