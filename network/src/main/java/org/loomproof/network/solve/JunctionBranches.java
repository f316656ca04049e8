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

    /** A junction that carried more than this and is found to carry nothing is tried at zero volts next. */
    private static final double MOOT_AMPS = 1e-9;

    /** At this many n Vt below zero the current is -Is to twelve figures. */
    private static final double BLOCKED_SLOPES = 28;

    private final double[] saturationAmps;
    private final double[] slopeVolts;
    private final double[] seriesOhms;
    private final double[] kneeVolts;
    private final double[] blockedVolts;
    private final ShockleyCurve[] curves;

    JunctionBranches(Layout layout, Tangents tangents) {
        super(layout, tangents, Term.Junction.class);
        int count = tangents.count;
        saturationAmps = new double[count];
        slopeVolts = new double[count];
        seriesOhms = new double[count];
        kneeVolts = new double[count];
        blockedVolts = new double[count];
        curves = new ShockleyCurve[count];
        for (int k : own) {
            ShockleyCurve curve = ((Term.Junction) layout.terms[tangents.branch[k]]).curve();
            curves[k] = curve;
            saturationAmps[k] = curve.saturationAmps();
            slopeVolts[k] = curve.slopeVolts();
            seriesOhms[k] = curve.seriesOhms();
            kneeVolts[k] = curve.junctionVolts(KNEE_AMPS);
            blockedVolts[k] = -BLOCKED_SLOPES * curve.slopeVolts();
        }
    }

    @Override
    boolean bend(int k, double volts, double missVolts) {
        double promised = tangents.curveAmps(k, volts);
        double is = saturationAmps[k];
        double byVoltage = volts - seriesOhms[k] * promised;
        double u;
        double amps;
        if (promised > is) {
            u = slopeVolts[k] * Math.log(1 + promised / is);
            amps = promised;
            if (Math.abs(byVoltage - u) <= missVolts) {
                return false;
            }
        } else {
            u = Math.min(byVoltage, tangents.touchAmps[k] > MOOT_AMPS ? 0 : kneeVolts[k]);
            amps = is * (Math.exp(u / slopeVolts[k]) - 1);
            if (byVoltage <= u && Math.abs(amps - promised) * slopeVolts[k] <= (amps + is) * missVolts) {
                return false;
            }
        }
        if (byVoltage > kneeVolts[k] && u < kneeVolts[k]) {
            u = kneeVolts[k];
            amps = KNEE_AMPS;
        }
        place(k, u, amps);
        return true;
    }

    private void place(int k, double u, double amps) {
        double steep = (amps + saturationAmps[k]) / slopeVolts[k];
        double slope = steep / (1 + seriesOhms[k] * steep);
        double volts = u + seriesOhms[k] * amps;
        tangents.place(k, volts, amps, slope, ShockleyCurve.LEAK_SIEMENS);
        if (u <= blockedVolts[k]) {
            tangents.trust(k, Double.NEGATIVE_INFINITY, blockedVolts[k]);
        } else {
            tangents.trustAbout(k, slopeVolts[k]);
        }
    }

    @Override
    void touchAtStart(int k) {
        place(k, 0, 0);
    }

    @Override
    void touch(int k, double volts, double curveAmps) {
        place(k, volts - seriesOhms[k] * curveAmps, curveAmps);
    }

    @Override
    double leakSiemens() {
        return ShockleyCurve.LEAK_SIEMENS;
    }

    /** The series resistance takes its drop at the promised current; what is left is put to the exponential. */
    @Override
    double missAmps(int k, double branchVolts) {
        double promised = tangents.curveAmps(k, branchVolts);
        double u = branchVolts - seriesOhms[k] * promised;
        double is = saturationAmps[k];
        if (u <= blockedVolts[k]) {
            return -is - promised;
        }
        double curve = is * (Math.exp(u / slopeVolts[k]) - 1);
        double steep = (Math.max(curve, 0) + is) / slopeVolts[k];
        return (curve - promised) / (1 + seriesOhms[k] * steep);
    }

    @Override
    double curveAmps(int k, double branchVolts) {
        return curves[k].amps(junctionVolts(k, branchVolts));
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
