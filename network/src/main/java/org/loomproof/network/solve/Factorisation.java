package org.loomproof.network.solve;

/**
 * Star-mesh elimination of a network of conductances, redone only where something changed.
 *
 * <p>Eliminating node k with conductances c(k,j) to its neighbours and c(k,0) to the chassis replaces the star by a mesh:
 * with d = c(k,0) + sum of c(k,j), every pair gains c(k,i) c(k,j) / d, every ground gains c(k,i) c(k,0) / d, and the current
 * fed into k is shared out as c(k,i) / d. No conductance is ever subtracted, so 1 mΩ beside 100 MΩ loses nothing, and d is
 * exactly zero only where no conductance is left: a floating island.
 *
 * <p>A changed branch dirties its front, and a front computed again dirties its parent, up to the root; all others keep what
 * they last passed on.
 */
final class Factorisation {
    private final FrontLayout fronts;

    private final double[] values;
    private final double[] inversePivot;
    private final int[] rowStart;
    private final long[] dirty;
    private long frontsComputed;

    Factorisation(FrontLayout fronts) {
        this.fronts = fronts;
        values = new double[fronts.valueCount];
        inversePivot = new double[fronts.rankCount];
        rowStart = new int[fronts.rankCount];
        for (int k = 0; k < rowStart.length; k++) {
            rowStart[k] = fronts.valueStart[fronts.frontOf[k]] + FrontLayout.CURRENT;
        }
        dirty = new long[(fronts.frontCount + 63) / 64];
        for (int f = 0; f < fronts.frontCount; f++) {
            dirty[f >> 6] |= 1L << f;
        }
    }

    /** The branch carries i = siemens v + amps from its first end to its second. */
    void set(int branch, double siemens, double amps) {
        values[FrontLayout.conductanceSlot(branch)] = siemens;
        int slot = FrontLayout.currentSlot(branch);
        values[slot] = amps;
        values[slot + 1] = -amps;
        markDirty(fronts.frontOfBranch[branch]);
    }

    double conductance(int branch) {
        return values[FrontLayout.conductanceSlot(branch)];
    }

    /** The constant part of the branch's current from its first end to its second. */
    double amps(int branch) {
        return values[FrontLayout.currentSlot(branch)];
    }

    /** Currents of all branches, from first end to second, at these voltages. */
    void amps(double[] volts, int[] from, int[] to, double[] amps) {
        double[] f = values;
        for (int b = 0; b < amps.length; b++) {
            amps[b] =
                    f[FrontLayout.conductanceSlot(b)] * (volts[from[b]] - volts[to[b]]) + f[FrontLayout.currentSlot(b)];
        }
    }

    /** Fronts computed so far: a measure of work. */
    long frontsComputed() {
        return frontsComputed;
    }

    /** Computes all dirty fronts, children before parents; each dirties its parent. */
    void refactor() {
        int[] parent = fronts.parent;
        for (int word = 0; word < dirty.length; word++) {
            while (dirty[word] != 0) {
                int front = (word << 6) + Long.numberOfTrailingZeros(dirty[word]);
                dirty[word] &= dirty[word] - 1;
                compute(front);
                frontsComputed++;
                markDirty(parent[front]);
            }
        }
    }

    private void markDirty(int front) {
        if (front >= 0) {
            dirty[front >> 6] |= 1L << front;
        }
    }

    private void compute(int front) {
        double[] f = values;
        int[] copyFrom = fronts.copyFrom;
        int start = fronts.valueStart[front];
        for (int v = start, end = fronts.valueStart[front + 1]; v < end; v++) {
            f[v] = f[copyFrom[v]];
        }
        int[] addTo = fronts.addTo;
        int[] addFrom = fronts.addFrom;
        for (int t = fronts.addStart[front], end = fronts.addStart[front + 1]; t < end; t++) {
            f[addTo[t]] += f[addFrom[t]];
        }
        int rank = fronts.rankOf[front];
        if (rank >= 0) {
            eliminate(rank, start, fronts.passedStart[front]);
        }
    }

    private void eliminate(int rank, int start, int passed) {
        double[] f = values;
        int joins = start + FrontLayout.JOINS;
        int s = passed - joins;
        double ground = f[start + FrontLayout.GROUND];
        double fed = f[start + FrontLayout.CURRENT];
        double pivot = ground;
        for (int i = 0; i < s; i++) {
            pivot += f[joins + i];
        }
        double inverse = pivot == 0 ? 0 : 1 / pivot;
        inversePivot[rank] = inverse;
        int currents = passed + s;
        int pairs = currents + s;
        for (int i = 0; i < s; i++) {
            double share = f[joins + i] * inverse;
            f[passed + i] += share * ground;
            f[currents + i] += share * fed;
            for (int j = i + 1; j < s; j++) {
                f[pairs++] += share * f[joins + j];
            }
        }
    }

    /**
     * Voltage of every rank; the entry after the last stays 0, the chassis. A floating island's last rank stands at 0 V.
     */
    void backSubstitute(double[] volts) {
        double[] f = values;
        int[] members = fronts.members;
        int[] memberStart = fronts.memberStart;
        for (int k = fronts.rankCount - 1; k >= 0; k--) {
            int at = rowStart[k];
            double sum = f[at];
            for (int m = memberStart[k], end = memberStart[k + 1]; m < end; m++) {
                sum += f[++at] * volts[members[m]];
            }
            volts[k] = sum * inversePivot[k];
        }
    }
}
