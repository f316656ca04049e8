package org.loomproof.network.solve;

import org.loomproof.network.law.Term;

/** All curved branches of a network: each has a tangent and a kind that knows how to move it. */
final class Curves {
    /** Part of its span within which a curve is told by its tangent and the next term of its series. */
    private static final double PART_OF_SPAN = 1.0 / 8;

    final Tangents tangents;
    private final CurvedBranches[] kindOf;
    private final Firmness firmness;

    Curves(Layout layout, Tangents tangents, Firmness firmness) {
        this.firmness = firmness;
        this.tangents = tangents;
        JunctionBranches junctions = new JunctionBranches(layout, tangents);
        FilamentBranches filaments = new FilamentBranches(layout, tangents);
        ChannelBranches channels = new ChannelBranches(layout, tangents);
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

    /** Moves every tangent that misses its curve, unless none misses by more than roughly; how many were moved. */
    int bendIfRough(double[] volts) {
        return isWithin(volts, tangents.rough) ? 0 : bend(volts);
    }

    private boolean isWithin(double[] volts, Trust trust) {
        int[] from = tangents.from;
        int[] to = tangents.to;
        double[] low = trust.low;
        double[] high = trust.high;
        for (int k = 0; k < from.length; k++) {
            double v = volts[from[k]] - volts[to[k]];
            if ((v < low[k] || v > high[k]) && !firmness.allows(tangents, k, mostMissAmps(k, v), trust)) {
                return false;
            }
        }
        return true;
    }

    /** Moves every tangent that misses its curve; how many were moved. */
    int bend(double[] volts) {
        int[] from = tangents.from;
        int[] to = tangents.to;
        double[] low = tangents.usual.low;
        double[] high = tangents.usual.high;
        int moved = 0;
        for (int k = 0; k < from.length; k++) {
            double v = volts[from[k]] - volts[to[k]];
            if (v < low[k] || v > high[k]) {
                moved += bend(k, v) ? 1 : 0;
            }
        }
        return moved;
    }

    private boolean bend(int k, double volts) {
        return !firmness.allows(tangents, k, mostMissAmps(k, volts), tangents.usual)
                && bendBeyond(k, volts, Trust.USUAL_MISS_VOLTS);
    }

    /** Asked kind by kind: a call whose receiver may be any of three is not compiled in line. */
    private boolean bendBeyond(int k, double volts, double missVolts) {
        return switch (kindOf[k]) {
            case JunctionBranches junctions -> junctions.bend(k, volts, missVolts);
            case FilamentBranches filaments -> filaments.bend(k, volts, missVolts);
            case ChannelBranches channels -> channels.bend(k, volts, missVolts);
        };
    }

    /** No less than by how much an active curve's tangent misses it: by the next term of its series while that is small. */
    private double mostMissAmps(int k, double volts) {
        double x = volts - tangents.touchVolts[k];
        double span = tangents.span[k];
        return Math.abs(x) < PART_OF_SPAN * span ? tangents.siemens[k] * x * x / span : Math.abs(missAmps(k, volts));
    }

    /** What an active curve carries more than its tangent. */
    private double missAmps(int k, double volts) {
        if (volts != tangents.missVolts[k]) {
            tangents.missVolts[k] = volts;
            // Asked kind by kind, as in bendBeyond.
            tangents.missAmps[k] = switch (kindOf[k]) {
                case JunctionBranches junctions -> junctions.missAmps(k, volts);
                case FilamentBranches filaments -> filaments.missAmps(k, volts);
                case ChannelBranches channels -> channels.missAmps(k, volts);
            };
        }
        return tangents.missAmps[k];
    }

    /** Moves every tangent that misses its curve by more than so many volts, trusting none unseen; how many were moved. */
    int bendAll(double[] volts, double missVolts) {
        int moved = 0;
        for (int k = 0; k < tangents.count; k++) {
            if (tangents.active[k]) {
                double v = volts[tangents.from[k]] - volts[tangents.to[k]];
                moved += bendBeyond(k, v, missVolts) ? 1 : 0;
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

    /** Adds to each end of a curve by how much its tangent may miss it at most at these voltages. */
    void addMostMisses(double[] volts, double[] most) {
        int[] from = tangents.from;
        int[] to = tangents.to;
        double[] low = tangents.usual.low;
        double[] high = tangents.usual.high;
        for (int k = 0; k < from.length; k++) {
            double v = volts[from[k]] - volts[to[k]];
            // Straight within its reach: no curve now, or one that is its own tangent there.
            boolean isStraight = tangents.span[k] == 0 && v >= low[k] && v <= high[k];
            if (!isStraight) {
                double size = mostMissAmps(k, v);
                most[from[k]] += size;
                most[to[k]] += size;
            }
        }
    }

    /** Adds to the current leaving each rank what the curves differ from their tangents at these voltages. */
    void addMisses(double[] volts, double[] leaving) {
        for (int k = 0; k < tangents.count; k++) {
            if (tangents.active[k]) {
                int from = tangents.from[k];
                int to = tangents.to[k];
                double miss = missAmps(k, volts[from] - volts[to]);
                leaving[from] += miss;
                leaving[to] -= miss;
            }
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
