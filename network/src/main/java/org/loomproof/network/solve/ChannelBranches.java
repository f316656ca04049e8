package org.loomproof.network.solve;

import org.loomproof.network.law.ChannelCurve;
import org.loomproof.network.law.Term;

/**
 * Current-limited output channels. From saturation the tangent is nearly flat, so a plain step throws the voltage far below
 * zero when the load lightens; a step that changes sign is stopped at zero, where the slope is that of the closed channel.
 */
final class ChannelBranches extends CurvedBranches {
    private static final double TRUSTED_VOLTS = 1e-5;
    private static final double MISS_VOLTS = 2e-8;

    private final ChannelCurve[] curves;
    private final double[] siemens;
    private final double[] constantAmps;

    ChannelBranches(Layout layout) {
        super(layout, Term.Channel.class);
        curves = new ChannelCurve[count];
        siemens = new double[count];
        constantAmps = new double[count];
        for (int k = 0; k < count; k++) {
            curves[k] = ((Term.Channel) layout.terms[branch[k]]).curve();
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
            if (Math.abs(v - touch) <= TRUSTED_VOLTS * strictness) {
                continue;
            }
            double amps = curves[k].amps(v);
            double slope = curves[k].slopeSiemens(v);
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
        touch(k, 0, 0, curves[k].slopeSiemens(0), factorisation);
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
        touch(k, branchVolts, curves[k].amps(branchVolts), curves[k].slopeSiemens(branchVolts), factorisation);
    }
}
