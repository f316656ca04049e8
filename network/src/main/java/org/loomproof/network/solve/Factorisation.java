package org.loomproof.network.solve;

import java.util.Arrays;

/**
 * Star-mesh elimination of a network of conductances, redone only where something changed.
 *
 * <p>Eliminating node k with conductances c(k,j) to its neighbours and c(k,0) to the chassis replaces the star by a mesh:
 * with d = c(k,0) + sum of c(k,j), every pair gains c(k,i) c(k,j) / d, every ground gains c(k,i) c(k,0) / d, and the current
 * fed into k is shared out as c(k,i) / d. No conductance is ever subtracted, so 1 mΩ beside 100 MΩ loses nothing, and d is
 * exactly zero only where no conductance is left: a floating island.
 *
 * <p>A changed branch dirties its front and the fronts above it up to the root; only those are computed again, from their
 * own branches and from what their children last passed on.
 */
final class Factorisation {
    private final FrontLayout fronts;
    private final boolean[] forward;
    private final double[] conductance;
    private final double[] current;
    private final double[] values;
    private final double[] inversePivot;
    private final long[] dirty;

    /** Fronts computed so far: the measure of work. */
    private long frontsComputed;

    Factorisation(Layout layout, FrontLayout fronts) {
        this.fronts = fronts;
        int branchCount = layout.branchCount;
        forward = new boolean[branchCount];
        for (int b = 0; b < branchCount; b++) {
            forward[b] = layout.from[b] < layout.to[b];
        }
        conductance = new double[branchCount];
        current = new double[branchCount];
        values = new double[fronts.valueStart[fronts.frontCount]];
        inversePivot = new double[fronts.frontCount];
        dirty = new long[(fronts.frontCount + 63) / 64];
        markAllDirty();
    }

    /** The branch carries i = siemens v + amps from its first end to its second. */
    void set(int branch, double siemens, double amps) {
        conductance[branch] = siemens;
        current[branch] = forward[branch] ? amps : -amps;
        markDirty(fronts.frontOf[branch]);
    }

    double conductance(int branch) {
        return conductance[branch];
    }

    /** The constant part of the branch's current from its first end to its second. */
    double amps(int branch) {
        return forward[branch] ? current[branch] : -current[branch];
    }

    long frontsComputed() {
        return frontsComputed;
    }

    void markAllDirty() {
        Arrays.fill(dirty, -1L);
        int spare = dirty.length * 64 - fronts.frontCount;
        if (spare > 0) {
            dirty[dirty.length - 1] = -1L >>> spare;
        }
    }

    private void markDirty(int front) {
        int[] parent = fronts.parent;
        while (front >= 0 && (dirty[front >> 6] & (1L << front)) == 0) {
            dirty[front >> 6] |= 1L << front;
            front = parent[front];
        }
    }

    /** Computes all dirty fronts, lower before higher. */
    void refactor() {
        for (int word = 0; word < dirty.length; word++) {
            // A front dirties none below it, so each word is taken once.
            long bits = dirty[word];
            dirty[word] = 0;
            while (bits != 0) {
                compute((word << 6) + Long.numberOfTrailingZeros(bits));
                bits &= bits - 1;
                frontsComputed++;
            }
        }
    }

    private void compute(int k) {
        double[] f = values;
        int start = fronts.valueStart[k];
        Arrays.fill(f, start, fronts.valueStart[k + 1], 0);
        for (int b : fronts.branches[k]) {
            f[fronts.conductanceAt[b]] += conductance[b];
            f[fronts.lowerCurrentAt[b]] -= current[b];
            if (fronts.upperCurrentAt[b] >= 0) {
                f[fronts.upperCurrentAt[b]] += current[b];
            }
        }
        for (int child : fronts.children[k]) {
            int[] passTo = fronts.passTo[child];
            int passed = fronts.valueStart[child + 1] - passTo.length;
            for (int t = 0; t < passTo.length; t++) {
                f[passTo[t]] += f[passed + t];
            }
        }
        eliminate(k, start);
    }

    private void eliminate(int k, int start) {
        double[] f = values;
        int s = fronts.memberCount(k);
        int joins = start + FrontLayout.JOINS;
        double ground = f[start + FrontLayout.GROUND];
        double fed = f[start + FrontLayout.CURRENT];
        double pivot = ground;
        for (int i = 0; i < s; i++) {
            pivot += f[joins + i];
        }
        if (pivot == 0) {
            inversePivot[k] = 0;
            return;
        }
        double inverse = 1 / pivot;
        inversePivot[k] = inverse;
        int grounds = joins + s;
        int currents = grounds + s;
        int pairs = currents + s;
        for (int i = 0; i < s; i++) {
            double join = f[joins + i];
            if (join != 0) {
                double share = join * inverse;
                f[grounds + i] += share * ground;
                f[currents + i] += share * fed;
                for (int j = i + 1; j < s; j++) {
                    f[pairs + j - i - 1] += share * f[joins + j];
                }
            }
            pairs += s - i - 1;
        }
    }

    /** Voltage of every rank; the entry after the last stays 0, the chassis. A floating island's last rank stands at 0 V. */
    void backSubstitute(double[] volts) {
        double[] f = values;
        int[] members = fronts.members;
        int[] memberStart = fronts.memberStart;
        int[] valueStart = fronts.valueStart;
        for (int k = fronts.frontCount - 1; k >= 0; k--) {
            int start = valueStart[k];
            double sum = f[start + FrontLayout.CURRENT];
            int joins = start + FrontLayout.JOINS;
            for (int m = memberStart[k], end = memberStart[k + 1]; m < end; m++) {
                sum += f[joins++] * volts[members[m]];
            }
            volts[k] = sum * inversePivot[k];
        }
    }
}
