package org.loomproof.network.solve;

import org.loomproof.network.law.FilamentCurve;
import org.loomproof.network.law.Term;

/**
 * Filament lamps. The curve bends so strongly near zero that a plain Newton step from a bright lamp overshoots through zero
 * and swings back; a step that changes sign is stopped at zero.
 */
final class FilamentBranches extends CurvedBranches {
    private final FilamentCurve[] curves;
    private final double[] glowVolts;

    FilamentBranches(Layout layout, Tangents tangents) {
        super(layout, tangents, Term.Filament.class);
        curves = new FilamentCurve[tangents.count];
        glowVolts = new double[tangents.count];
        for (int k : own) {
            curves[k] = ((Term.Filament) layout.terms[tangents.branch[k]]).curve();
            glowVolts[k] = curves[k].glowVolts();
        }
    }

    @Override
    boolean bend(int k, double volts, double missVolts) {
        FilamentCurve curve = curves[k];
        double chord = curve.chordSiemens(volts);
        double slope = curve.slopeSiemens(volts, chord);
        if (Math.abs(chord * volts - tangents.curveAmps(k, volts)) <= slope * missVolts) {
            return false;
        }
        if (volts * tangents.touchVolts[k] < 0) {
            touchAtStart(k);
        } else {
            place(k, volts, chord * volts, slope);
        }
        return true;
    }

    /** The slope changes by at most 0.6 of its own size over the voltage itself, or over that at which it begins to glow. */
    private void place(int k, double volts, double amps, double slope) {
        tangents.place(k, volts, amps, slope, 0);
        tangents.trustAbout(k, 2 * Math.max(Math.abs(volts), glowVolts[k]));
    }

    @Override
    void touchAtStart(int k) {
        place(k, 0, 0, curves[k].chordSiemens(0));
    }

    @Override
    void touch(int k, double volts, double curveAmps) {
        double chord = volts == 0 ? curves[k].chordSiemens(0) : curveAmps / volts;
        place(k, volts, curveAmps, curves[k].slopeSiemens(volts, chord));
    }

    @Override
    double curveAmps(int k, double volts) {
        return curves[k].amps(volts);
    }

    @Override
    double missAmps(int k, double volts) {
        return curves[k].amps(volts) - tangents.curveAmps(k, volts);
    }
}
