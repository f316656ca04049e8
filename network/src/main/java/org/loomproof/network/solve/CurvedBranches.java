package org.loomproof.network.solve;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.loomproof.network.law.Term;

/**
 * All branches of one curve kind, each stood in for by its tangent. {@link #bend} compares the tangents with the curves at
 * the voltages just found and moves those that disagree.
 */
abstract sealed class CurvedBranches permits JunctionBranches, FilamentBranches, ChannelBranches {
    final int count;
    final int[] branch;
    final int[] from;
    final int[] to;
    final boolean[] active;

    /** The voltage at which each tangent touches its curve. */
    final double[] touchVolts;

    /** How far from its touching point a tangent is trusted unseen, and how far it may miss its curve; 1 is the usual. */
    double strictness = 1;

    CurvedBranches(Layout layout, Class<? extends Term> kind) {
        branch = IntStream.range(0, layout.branchCount)
                .filter(b -> kind.isInstance(layout.terms[b]))
                .toArray();
        count = branch.length;
        from = Arrays.stream(branch).map(b -> layout.from[b]).toArray();
        to = Arrays.stream(branch).map(b -> layout.to[b]).toArray();
        active = new boolean[count];
        touchVolts = new double[count];
    }

    /**
     * Moves every tangent that misses its curve at these voltages.
     *
     * @return how many were moved; zero means all agree
     */
    abstract int bend(double[] volts, Factorisation factorisation);

    /** Puts the tangent back to where a search begins. */
    abstract void touchAtStart(int k, Factorisation factorisation);

    /** Puts the tangent exactly at a voltage. */
    abstract void touchAt(int k, double branchVolts, Factorisation factorisation);

    /** How far the tangent's current at this voltage is from the curve, amps: read from the curve itself. */
    abstract double missAmps(int k, double branchVolts);

    /** The exact current of the curve at the branch's voltage. */
    abstract double amps(int k, double branchVolts);

    final void activate(int k, Factorisation factorisation) {
        if (!active[k]) {
            active[k] = true;
            touchAtStart(k, factorisation);
        }
    }

    final void deactivate(int k) {
        active[k] = false;
    }
}
