package org.loomproof.network.solve;

/**
 * What every branch carries now, i = siemens v + amps, and what all of them together add to each slot of the elimination.
 * Nothing is taken back by subtraction: a slot one of whose branches has changed is added up anew.
 */
final class BranchSums {
    private final EliminationScheme scheme;
    private final BranchSlots slots;
    private final double[] siemens;
    private final double[] amps;

    /** What branches add to each slot, but for those changed since. */
    private final double[] sums;

    private final int[] changed;
    private final boolean[] isChanged;
    private int changedCount;

    /** Ranks whose slots have changed since they were last eliminated. */
    final RankSet touched;

    BranchSums(Layout layout) {
        scheme = layout.scheme;
        slots = layout.slots;
        siemens = new double[layout.branchCount];
        amps = new double[layout.branchCount];
        sums = new double[scheme.slotCount()];
        changed = new int[scheme.slotCount()];
        isChanged = new boolean[scheme.slotCount()];
        touched = RankSet.full(scheme.rankCount);
    }

    /** The branch carries i = siemens v + amps from its first end to its second. */
    void set(int branch, double newSiemens, double newAmps) {
        if (siemens[branch] != newSiemens) {
            siemens[branch] = newSiemens;
            change(slots.conductance[branch]);
        }
        if (amps[branch] != newAmps) {
            amps[branch] = newAmps;
            change(slots.intoFirst[branch]);
            change(slots.intoSecond[branch]);
        }
    }

    private void change(int slot) {
        if (slot < sums.length && !isChanged[slot]) {
            isChanged[slot] = true;
            changed[changedCount++] = slot;
        }
    }

    double siemens(int branch) {
        return siemens[branch];
    }

    /** Current of a branch, from its first end to its second, at the voltage across it. */
    double amps(int branch, double branchVolts) {
        return siemens[branch] * branchVolts + amps[branch];
    }

    /** What all branches together add to each slot; live. */
    double[] addUp() {
        int currents = scheme.currentSlots();
        int joins = scheme.joinSlots();
        for (int c = 0; c < changedCount; c++) {
            int slot = changed[c];
            isChanged[slot] = false;
            boolean isCurrent = slot >= currents && slot < joins;
            double sum = 0;
            for (int t = slots.addingStart[slot], end = slots.addingStart[slot + 1]; t < end; t++) {
                int b = slots.adding[t];
                sum += isCurrent ? (b >= 0 ? amps[b] : -amps[~b]) : siemens[b];
            }
            sums[slot] = sum;
            touched.add(scheme.ownerOf(slot));
        }
        changedCount = 0;
        return sums;
    }

    /** For every rank but the chassis, the sum of the currents that leave it at these voltages. */
    void leaving(double[] volts, double[] leaving) {
        addUp();
        int currents = scheme.currentSlots();
        for (int k = 0; k < scheme.rankCount; k++) {
            leaving[k] = sums[k] * volts[k] - sums[currents + k];
        }
        int[] low = slots.joinLow;
        int[] high = slots.joinHigh;
        for (int j = 0; j < low.length; j++) {
            double through = sums[slots.joins[j]] * (volts[low[j]] - volts[high[j]]);
            leaving[low[j]] += through;
            leaving[high[j]] -= through;
        }
    }
}
