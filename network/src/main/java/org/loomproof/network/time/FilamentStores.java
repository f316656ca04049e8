package org.loomproof.network.time;

import java.util.Arrays;
import java.util.List;
import org.loomproof.network.law.FilamentHeat;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.solve.CompanionSolver;

/**
 * The temperatures x of filaments. Over a stage x follows from the voltage, and with it the current i = g(x) v. The branch
 * stands for the tangent of that curve at the voltage found last; where the next voltage lies off the tangent, once more.
 */
final class FilamentStores extends StoreKind {
    /** How far tangent and curve may lie apart, as a part of the rated voltage. */
    private static final double AGREED_PART = 5e-7;

    private final FilamentHeat[] heat;

    /** Of each, the fifth root of the temperature found last, and the tangent that stands for it. */
    private final double[] roots;

    private final double[] siemens;
    private final double[] amps;

    FilamentStores(CompanionSolver solver, Method method, List<Integer> branches) {
        super(solver, method, branches, 1);
        heat = branches.stream()
                .map(b -> FilamentHeat.of((Lamp) solver.network().parts().get(solver.partOf(b))))
                .toArray(FilamentHeat[]::new);
        roots = new double[count];
        Arrays.fill(roots, 1);
        siemens = new double[count];
        amps = new double[count];
    }

    double coldShare(int k) {
        return heat[k].coldShare();
    }

    double steadyShare(int k, double volts) {
        return heat[k].steadyShare(volts);
    }

    @Override
    void stand(double seconds) {
        for (int k = 0; k < count; k++) {
            if (counts[k]) {
                put(k, seconds, volts(k));
            }
        }
    }

    private void put(int k, double seconds, double volts) {
        roots[k] = root(k, seconds, volts);
        double chord = heat[k].siemens(roots[k]);
        siemens[k] = seconds == 0 ? chord : heat[k].slopeSiemens(roots[k], seconds, volts);
        amps[k] = (chord - siemens[k]) * volts;
        solver.stand(branch[k], siemens[k], amps[k]);
    }

    private double root(int k, double seconds, double volts) {
        return seconds == 0 ? FilamentHeat.root(start[k]) : heat[k].implicitRoot(start[k], seconds, volts, roots[k]);
    }

    @Override
    boolean read(double seconds) {
        boolean again = false;
        for (int k = 0; k < count; k++) {
            double volts = counts[k] ? volts(k) : 0;
            roots[k] = root(k, seconds, volts);
            found[k] = FilamentHeat.share(roots[k]);
            foundRate[k] = heat[k].rate(roots[k], volts);
            if (counts[k] && seconds > 0) {
                double miss = Math.abs((heat[k].siemens(roots[k]) - siemens[k]) * volts - amps[k]);
                if (miss > AGREED_PART * heat[k].ratedVolts() * siemens[k]) {
                    put(k, seconds, volts);
                    again = true;
                }
            }
        }
        return again;
    }
}
