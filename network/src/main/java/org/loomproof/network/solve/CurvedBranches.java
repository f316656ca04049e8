package org.loomproof.network.solve;

import java.util.stream.IntStream;
import org.loomproof.network.law.Term;

/** One kind of curve: how its tangents are placed. Curves are numbered over all kinds, see {@link Tangents}. */
abstract sealed class CurvedBranches permits JunctionBranches, FilamentBranches, ChannelBranches {
    final Tangents tangents;

    /** The curves of this kind, ascending. */
    final int[] own;

    CurvedBranches(Layout layout, Tangents tangents, Class<? extends Term> kind) {
        this.tangents = tangents;
        own = IntStream.range(0, tangents.count)
                .filter(k -> kind.isInstance(layout.terms[tangents.branch[k]]))
                .toArray();
    }

    /**
     * Moves the tangent if it misses its curve at this voltage by more than so many volts: the miss in amps over the slope.
     * An error of that many volts in series with a branch moves no node by more, however small the current.
     *
     * @return whether it was moved
     */
    abstract boolean bend(int k, double volts, double missVolts);

    /** Puts the tangent to where a search begins. */
    abstract void touchAtStart(int k);

    /** Puts the tangent to a point of the curve. */
    abstract void touch(int k, double volts, double curveAmps);

    /** The current of the curve, without what may leak beside it. */
    abstract double curveAmps(int k, double volts);

    /** What leaks beside the curve. */
    double leakSiemens() {
        return 0;
    }

    /** What the curve carries more than its tangent at a voltage. */
    abstract double missAmps(int k, double volts);
}
