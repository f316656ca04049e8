package org.loomproof.network.solve;

import org.loomproof.network.law.ChannelCurve;
import org.loomproof.network.law.Term;

/**
 * Current-limited output channels. From saturation the tangent is nearly flat, so a plain step throws the voltage far below
 * zero when the load lightens; a step that changes sign is stopped at zero, where the slope is that of the closed channel.
 */
final class ChannelBranches extends CurvedBranches {
    private final ChannelCurve[] curves;

    ChannelBranches(Layout layout, Tangents tangents) {
        super(layout, tangents, Term.Channel.class);
        curves = new ChannelCurve[tangents.count];
        for (int k : own) {
            curves[k] = ((Term.Channel) layout.terms[tangents.branch[k]]).curve();
        }
    }

    @Override
    boolean bend(int k, double volts, double missVolts) {
        double amps = curves[k].amps(volts);
        double slope = curves[k].slopeSiemens(volts);
        if (Math.abs(amps - tangents.curveAmps(k, volts)) <= slope * missVolts) {
            return false;
        }
        if (volts * tangents.touchVolts[k] < 0) {
            touchAtStart(k);
        } else {
            place(k, volts, amps, slope);
        }
        return true;
    }

    /** Saturated, the curve is its own tangent; before, its slope falls to nothing at the voltage where it saturates. */
    private void place(int k, double volts, double amps, double slope) {
        tangents.place(k, volts, amps, slope, 0);
        double left = curves[k].saturatesAtVolts() - volts;
        if (left <= 0) {
            tangents.trust(k, curves[k].saturatesAtVolts(), Double.POSITIVE_INFINITY);
        } else {
            tangents.trustAbout(k, left);
        }
    }

    @Override
    void touchAtStart(int k) {
        place(k, 0, 0, curves[k].slopeSiemens(0));
    }

    @Override
    void touch(int k, double volts, double curveAmps) {
        place(k, volts, curveAmps, curves[k].slopeSiemens(volts));
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
