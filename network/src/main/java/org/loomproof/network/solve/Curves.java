package org.loomproof.network.solve;

import java.util.List;
import org.loomproof.network.law.Term;

/** All curved branches of a network: each has a tangent and a kind that knows how to move it. */
final class Curves {
    final Tangents tangents;
    private final List<CurvedBranches> kinds;
    private final CurvedBranches[] kindOf;
    private Trust trust;

    Curves(Layout layout, BranchSums sums) {
        tangents = new Tangents(layout, sums);
        trust = tangents.usual;
        JunctionBranches junctions = new JunctionBranches(layout, tangents);
        FilamentBranches filaments = new FilamentBranches(layout, tangents);
        ChannelBranches channels = new ChannelBranches(layout, tangents);
        kinds = List.of(junctions, filaments, channels);
        kindOf = new CurvedBranches[tangents.count];
        for (int k = 0; k < tangents.count; k++) {
            kindOf[k] = switch (layout.terms[tangents.branch[k]]) {
                case Term.Junction j -> junctions;
                case Term.Filament f -> filaments;
                case Term.Channel c -> channels;
                case Term.Conductance s -> throw noCurve(s);
                case Term.Coil s -> throw noCurve(s);
                case Term.Capacitance s -> throw noCurve(s);
                case Term.Throw s -> throw noCurve(s);
            };
        }
    }

    private static IllegalStateException noCurve(Term straight) {
        return new IllegalStateException("a straight branch laid out as a curved one: " + straight);
    }

    void trust(Trust wanted) {
        trust = wanted;
    }

    /** Moves every tangent that misses its curve; how many were moved. */
    int bend(double[] volts) {
        int[] from = tangents.from;
        int[] to = tangents.to;
        double[] low = trust.low;
        double[] high = trust.high;
        int moved = 0;
        for (int k = 0; k < from.length; k++) {
            double v = volts[from[k]] - volts[to[k]];
            if (v < low[k] || v > high[k]) {
                moved += kindOf[k].bend(k, v, trust.missVolts) ? 1 : 0;
            }
        }
        return moved;
    }

    /** Moves every tangent that misses its curve by more than so many volts, trusting none unseen; how many were moved. */
    int bendAll(double[] volts, double missVolts) {
        int moved = 0;
        for (int k = 0; k < tangents.count; k++) {
            if (tangents.active[k]) {
                double v = volts[tangents.from[k]] - volts[tangents.to[k]];
                moved += kindOf[k].bend(k, v, missVolts) ? 1 : 0;
            }
        }
        return moved;
    }

    /** Puts every tangent exactly to the voltage of its branch. */
    void touchAt(double[] volts) {
        for (int k = 0; k < tangents.count; k++) {
            if (tangents.active[k]) {
                double v = volts[tangents.from[k]] - volts[tangents.to[k]];
                kindOf[k].touch(k, v, kindOf[k].curveAmps(k, v));
            }
        }
    }

    /** Adds to the current leaving each rank what the curves differ from their tangents at these voltages. */
    void addMisses(double[] volts, double[] leaving) {
        for (CurvedBranches kind : kinds) {
            kind.addMisses(volts, leaving);
        }
    }

    /** The exact current of an active curve, with what leaks beside it. */
    double amps(int k, double branchVolts) {
        return kindOf[k].curveAmps(k, branchVolts) + kindOf[k].leakSiemens() * branchVolts;
    }

    /** The curve counts from now on, its tangent where a search begins. */
    void enter(int k) {
        tangents.active[k] = true;
        kindOf[k].touchAtStart(k);
    }

    /** Puts an active curve's tangent to a point of the curve. */
    void touch(int k, double volts, double curveAmps) {
        kindOf[k].touch(k, volts, curveAmps);
    }
}
