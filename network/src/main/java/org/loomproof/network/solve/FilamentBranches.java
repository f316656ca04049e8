package org.loomproof.network.solve;

import org.loomproof.network.law.FilamentCurve;
import org.loomproof.network.law.Term;

/**
 * Filament lamps. The curve bends so strongly near zero that a plain Newton step from a bright lamp overshoots through zero
 * and swings back; a step that changes sign is stopped at zero.
 */
final class FilamentBranches extends CurvedBranches {
    private static final double TRUSTED_VOLTS = 2e-5;
    private static final double TRUSTED_PART = 1e-4;
    private static final double MISS_VOLTS = 2e-8;

    private final FilamentCurve[] curves;
    private final double[] siemens;
    private final double[] constantAmps;

    FilamentBranches(Layout layout) {
        super(layout, Term.Filament.class);
        curves = new FilamentCurve[count];
        siemens = new double[count];
        constantAmps = new double[count];
        for (int k = 0; k < count; k++) {
            curves[k] = ((Term.Filament) layout.terms[branch[k]]).curve();
        }
    }

    @Override
    int bend(double[] volts, Factorisation factorisation) {
        int moved = 0;
        for (int k = 0; k < count; k++) {
            if (!active[k]) {
                continue;
            }
            double v = volts[from[k]] - volts[to[k]];
            double touch = touchVolts[k];
            if (Math.abs(v - touch) <= (TRUSTED_VOLTS + TRUSTED_PART * Math.abs(v)) * strictness) {
                continue;
            }
            FilamentCurve curve = curves[k];
            double chord = curve.chordSiemens(v);
            double amps = chord * v;
            double slope = curve.slopeSiemens(v, chord);
            if (Math.abs(amps - siemens[k] * v - constantAmps[k]) <= slope * MISS_VOLTS * strictness) {
                continue;
            }
            if (v * touch < 0) {
                touchAtStart(k, factorisation);
            } else {
                touch(k, v, amps, slope, factorisation);
            }
            moved++;
        }
        return moved;
    }

    private void touch(int k, double v, double amps, double slope, Factorisation factorisation) {
        touchVolts[k] = v;
        siemens[k] = slope;
        constantAmps[k] = amps - slope * v;
        factorisation.set(branch[k], slope, constantAmps[k]);
    }

    @Override
    void touchAtStart(int k, Factorisation factorisation) {
        touch(k, 0, 0, curves[k].chordSiemens(0), factorisation);
    }

    @Override
    double missAmps(int k, double branchVolts) {
        return curves[k].amps(branchVolts) - (siemens[k] * branchVolts + constantAmps[k]);
    }

    @Override
    double amps(int k, double branchVolts) {
        return curves[k].amps(branchVolts);
    }

    @Override
    void touchAt(int k, double branchVolts, Factorisation factorisation) {
        double chord = curves[k].chordSiemens(branchVolts);
        touch(k, branchVolts, chord * branchVolts, curves[k].slopeSiemens(branchVolts, chord), factorisation);
    }
}
