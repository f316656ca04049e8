package org.loomproof.network.solve;

import org.loomproof.network.law.ShockleyCurve;
import org.loomproof.network.law.Term;

/**
 * Diode junctions, stepped by current: where the tangent promises a forward current i, the next junction voltage is that of
 * the curve at i. A step by voltage would climb the exponential one n Vt an iteration. A junction found above its knee while
 * it hardly conducts jumps to the knee.
 */
final class JunctionBranches extends CurvedBranches {
    /** Where a junction that is to conduct is tried first. */
    private static final double KNEE_AMPS = 1e-3;

    /** At this many n Vt below zero the current is -Is to twelve figures. */
    private static final double BLOCKED_SLOPES = 28;

    /** A tangent trusted over 30 uV is wrong by dv^2 / (2 n Vt), below 2e-8 V. */
    private static final double TRUSTED_VOLTS = 3e-5;

    /**
     * A miss counts in volts: the miss in amps over the slope. An error of this many volts in series with a branch moves no
     * node by more, however little current flows.
     */
    private static final double MISS_VOLTS = 2e-8;

    private final double[] saturationAmps;
    private final double[] slopeVolts;
    private final double[] seriesOhms;
    private final double[] kneeVolts;
    private final double[] blockedVolts;
    private final double[] junctionSiemens;
    private final double[] junctionAmps;
    private final boolean[] blocked;
    private final ShockleyCurve[] curves;

    JunctionBranches(Layout layout) {
        super(layout, Term.Junction.class);
        saturationAmps = new double[count];
        slopeVolts = new double[count];
        seriesOhms = new double[count];
        kneeVolts = new double[count];
        blockedVolts = new double[count];
        junctionSiemens = new double[count];
        junctionAmps = new double[count];
        blocked = new boolean[count];
        curves = new ShockleyCurve[count];
        for (int k = 0; k < count; k++) {
            ShockleyCurve curve = ((Term.Junction) layout.terms[branch[k]]).curve();
            curves[k] = curve;
            saturationAmps[k] = curve.saturationAmps();
            slopeVolts[k] = curve.slopeVolts();
            seriesOhms[k] = curve.seriesOhms();
            kneeVolts[k] = curve.junctionVolts(KNEE_AMPS);
            blockedVolts[k] = -BLOCKED_SLOPES * curve.slopeVolts();
        }
    }

    @Override
    int bend(double[] volts, Factorisation factorisation) {
        int moved = 0;
        double trusted = TRUSTED_VOLTS * strictness;
        double missVolts = MISS_VOLTS * strictness;
        for (int k = 0; k < count; k++) {
            if (!active[k]) {
                continue;
            }
            double v = volts[from[k]] - volts[to[k]];
            if (Math.abs(v - touchVolts[k]) <= trusted || (blocked[k] && v <= blockedVolts[k])) {
                continue;
            }
            double promised = junctionSiemens[k] * v + junctionAmps[k];
            double is = saturationAmps[k];
            double byVoltage = v - seriesOhms[k] * promised;
            double u;
            double amps;
            if (promised > is) {
                u = slopeVolts[k] * Math.log(1 + promised / is);
                amps = promised;
                if (Math.abs(byVoltage - u) <= missVolts) {
                    continue;
                }
            } else {
                u = Math.min(byVoltage, kneeVolts[k]);
                amps = is * (Math.exp(u / slopeVolts[k]) - 1);
                if (byVoltage <= u && Math.abs(amps - promised) * slopeVolts[k] <= (amps + is) * missVolts) {
                    continue;
                }
            }
            if (byVoltage > kneeVolts[k] && u < kneeVolts[k]) {
                u = kneeVolts[k];
                amps = KNEE_AMPS;
            }
            touch(k, u, amps, factorisation);
            moved++;
        }
        return moved;
    }

    private void touch(int k, double u, double amps, Factorisation factorisation) {
        double steep = (amps + saturationAmps[k]) / slopeVolts[k];
        double siemens = steep / (1 + seriesOhms[k] * steep);
        touchVolts[k] = u + seriesOhms[k] * amps;
        blocked[k] = u <= blockedVolts[k];
        junctionSiemens[k] = siemens;
        junctionAmps[k] = amps - siemens * touchVolts[k];
        factorisation.set(branch[k], siemens + ShockleyCurve.LEAK_SIEMENS, junctionAmps[k]);
    }

    @Override
    void touchAtStart(int k, Factorisation factorisation) {
        touch(k, 0, 0, factorisation);
    }

    /** The series resistance takes its drop at the promised current; what is left is put to the exponential. */
    @Override
    double missAmps(int k, double branchVolts) {
        double promised = junctionSiemens[k] * branchVolts + junctionAmps[k];
        double u = branchVolts - seriesOhms[k] * promised;
        double is = saturationAmps[k];
        double curve = u <= blockedVolts[k] ? -is : is * (Math.exp(u / slopeVolts[k]) - 1);
        double steep = (Math.max(curve, 0) + is) / slopeVolts[k];
        return (curve - promised) / (1 + seriesOhms[k] * steep);
    }

    @Override
    double amps(int k, double branchVolts) {
        return curves[k].amps(junctionVolts(k, branchVolts)) + ShockleyCurve.LEAK_SIEMENS * branchVolts;
    }

    @Override
    void touchAt(int k, double branchVolts, Factorisation factorisation) {
        double u = junctionVolts(k, branchVolts);
        touch(k, u, curves[k].amps(u), factorisation);
    }

    /** Junction voltage u with u + Rs i(u) = v, by Newton on a function that rises and bends one way, from above. */
    private double junctionVolts(int k, double v) {
        double rs = seriesOhms[k];
        if (rs == 0 || v <= 0) {
            return v <= 0 ? v + rs * saturationAmps[k] * -Math.expm1(v / slopeVolts[k]) : v;
        }
        // Above the root both by voltage alone and by current alone; the function is convex, so steps descend to the
        // root.
        double u = Math.min(v, slopeVolts[k] * Math.log1p(v / (rs * saturationAmps[k])));
        for (int step = 0; step < 60; step++) {
            double rising = saturationAmps[k] * Math.exp(u / slopeVolts[k]);
            double miss = u + rs * (rising - saturationAmps[k]) - v;
            double move = miss / (1 + rs * rising / slopeVolts[k]);
            u -= move;
            if (Math.abs(move) <= 1e-15 * Math.abs(u)) {
                break;
            }
        }
        return u;
    }
}
