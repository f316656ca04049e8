package org.loomproof.network.solve;

/**
 * What every branch carries now, i = siemens v + amps, and what all of them together add to each slot of the elimination.
 * Nothing is taken back by subtraction: a slot whose branches have changed is added up anew.
 */
final class BranchSums {
    private final Layout layout;
    private final EliminationScheme scheme;
    private final BranchSlots slots;
    private final double[] siemens;
    private final double[] amps;

    /** What straight branches add to each slot, but for those changed since. */
    private final double[] straight;

    private final int[] changed;
    private final boolean[] isChanged;
    private int changedCount;

    BranchSums(Layout layout) {
        this.layout = layout;
        scheme = layout.scheme;
        slots = layout.slots;
        siemens = new double[layout.branchCount];
        amps = new double[layout.branchCount];
        straight = new double[scheme.slotCount()];
        changed = new int[scheme.slotCount()];
        isChanged = new boolean[scheme.slotCount()];
    }

    /** The branch carries i = siemens v + amps from its first end to its second. */
    void set(int branch, double newSiemens, double newAmps) {
        if (layout.curveOf(branch) < 0) {
            if (siemens[branch] != newSiemens) {
                change(slots.conductance[branch]);
            }
            if (amps[branch] != newAmps) {
                change(slots.intoFirst[branch]);
                change(slots.intoSecond[branch]);
            }
        }
        siemens[branch] = newSiemens;
        amps[branch] = newAmps;
    }

    private void change(int slot) {
        if (slot < straight.length && !isChanged[slot]) {
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

    /** Writes the sums of all branches; curved ones change at nearly every step and are added last. */
    void write(double[] values) {
        addUpChanged();
        System.arraycopy(straight, 0, values, 0, straight.length);
        for (int b : layout.curved) {
            values[slots.conductance[b]] += siemens[b];
            values[slots.intoFirst[b]] -= amps[b];
            values[slots.intoSecond[b]] += amps[b];
        }
    }

    private void addUpChanged() {
        for (int c = 0; c < changedCount; c++) {
            int slot = changed[c];
            isChanged[slot] = false;
            boolean isCurrent = slot >= scheme.currentSlots() && slot < scheme.joinSlots();
            double sum = 0;
            for (int t = slots.addingStart[slot], end = slots.addingStart[slot + 1]; t < end; t++) {
                int b = slots.adding[t];
                sum += isCurrent ? (b >= 0 ? amps[b] : -amps[~b]) : siemens[b];
            }
            straight[slot] = sum;
        }
        changedCount = 0;
    }

    /** For every rank but the chassis, the sum of the currents that leave it at these voltages. */
    void addUp(double[] volts, double[] leaving) {
        addUpChanged();
        int currents = scheme.currentSlots();
        for (int k = 0; k < scheme.rankCount; k++) {
            leaving[k] = straight[k] * volts[k] - straight[currents + k];
        }
        int[] low = slots.straightLow;
        int[] high = slots.straightHigh;
        for (int j = 0; j < low.length; j++) {
            double through = straight[slots.straightJoins[j]] * (volts[low[j]] - volts[high[j]]);
            leaving[low[j]] += through;
            leaving[high[j]] -= through;
        }
        for (int b : layout.curved) {
            int a = layout.from[b];
            int z = layout.to[b];
            double through = amps(b, volts[a] - volts[z]);
            leaving[a] += through;
            leaving[z] -= through;
        }
    }
}
