package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Star-mesh elimination of a network of conductances.
 *
 * <p>Eliminating node k with conductances c(k,j) to its neighbours and c(k,0) to the chassis replaces the star by a mesh:
 * with d = c(k,0) + sum of c(k,j), every pair gains c(k,i) c(k,j) / d, every ground gains c(k,i) c(k,0) / d, and the current
 * fed into k is shared out as c(k,i) / d. No conductance is ever subtracted, so 1 mΩ beside 100 MΩ loses nothing, and d is
 * exactly zero only where no conductance is left: a floating island.
 */
final class Factorisation {
    private final EliminationScheme scheme;
    private final double[] siemens;
    private final double[] amps;

    /** What straight branches alone add to every slot, kept up to date for those changed. */
    private final double[] own;

    /** Where each slot's straight branches begin in {@link #adding}: its own number one that feeds, the complement one that drains. */
    private final int[] addingStart;

    private final int[] adding;

    /** Branches that change at nearly every step; they are added anew each time. */
    private final int[] curved;

    private final boolean[] isCurved;

    /** Per branch, the slot of its conductance and those of the currents it drains and feeds. */
    private final int[] conductanceSlot;

    private final int[] drainedSlot;
    private final int[] fedSlot;
    private final int[] changed;
    private final boolean[] isChanged;
    private int changedCount;

    /** Own sums, and on top of them what elimination adds. */
    private final double[] values;

    private final double[] inversePivot;
    private long eliminations;

    /** Slots of joins that straight branches add to, and the ranks they join. */
    private final int[] straightJoins;

    private final int[] straightLow;
    private final int[] straightHigh;

    Factorisation(EliminationScheme scheme, int[] from, int[] to, int[] curved) {
        this.scheme = scheme;
        this.curved = curved;
        siemens = new double[from.length];
        amps = new double[from.length];
        int slots = scheme.slotCount() + from.length;
        own = new double[scheme.slotCount()];
        values = new double[slots];
        inversePivot = new double[scheme.rankCount];
        changed = new int[scheme.slotCount()];
        isChanged = new boolean[scheme.slotCount()];
        conductanceSlot = new int[from.length];
        drainedSlot = new int[from.length];
        fedSlot = new int[from.length];
        isCurved = new boolean[from.length];
        for (int b : curved) {
            isCurved[b] = true;
        }
        List<IntList> lists = new ArrayList<>();
        for (int slot = 0; slot < slots; slot++) {
            lists.add(new IntList());
        }
        for (int b = 0; b < from.length; b++) {
            // Each has a sink of its own, so that additions to sinks need not wait for each other.
            int sink = scheme.slotCount() + b;
            conductanceSlot[b] = scheme.slotBetween(from[b], to[b], sink);
            drainedSlot[b] = scheme.slotInto(from[b], to[b], sink);
            fedSlot[b] = scheme.slotInto(to[b], from[b], sink);
            if (!isCurved[b]) {
                lists.get(conductanceSlot[b]).add(b);
                lists.get(drainedSlot[b]).add(~b);
                lists.get(fedSlot[b]).add(b);
            }
        }
        addingStart = new int[scheme.slotCount() + 1];
        IntList all = new IntList();
        for (int slot = 0; slot < scheme.slotCount(); slot++) {
            all.addAll(lists.get(slot).toArray());
            addingStart[slot + 1] = all.size();
        }
        adding = all.toArray();
        IntList joins = new IntList();
        IntList lows = new IntList();
        IntList highs = new IntList();
        for (int low = 0; low < scheme.rankCount; low++) {
            for (int m = scheme.memberStart[low]; m < scheme.memberStart[low + 1]; m++) {
                int slot = scheme.joinSlots() + m;
                if (addingStart[slot + 1] > addingStart[slot]) {
                    joins.add(slot);
                    lows.add(low);
                    highs.add(scheme.members[m]);
                }
            }
        }
        straightJoins = joins.toArray();
        straightLow = lows.toArray();
        straightHigh = highs.toArray();
    }

    /** For every rank but the chassis, the sum of the currents that leave it through straight branches at these voltages. */
    void addUpStraight(double[] volts, double[] leaving) {
        addUpChanged();
        int currents = scheme.currentSlots();
        for (int k = 0; k < scheme.rankCount; k++) {
            leaving[k] = own[k] * volts[k] - own[currents + k];
        }
        for (int j = 0; j < straightJoins.length; j++) {
            int low = straightLow[j];
            int high = straightHigh[j];
            double amps = own[straightJoins[j]] * (volts[low] - volts[high]);
            leaving[low] += amps;
            leaving[high] -= amps;
        }
    }

    /** The branch carries i = siemens v + amps from its first end to its second. */
    void set(int branch, double newSiemens, double newAmps) {
        if (!isCurved[branch]) {
            if (siemens[branch] != newSiemens) {
                change(conductanceSlot[branch]);
            }
            if (amps[branch] != newAmps) {
                change(drainedSlot[branch]);
                change(fedSlot[branch]);
            }
        }
        siemens[branch] = newSiemens;
        amps[branch] = newAmps;
    }

    private void change(int slot) {
        if (slot < own.length && !isChanged[slot]) {
            isChanged[slot] = true;
            changed[changedCount++] = slot;
        }
    }

    double conductance(int branch) {
        return siemens[branch];
    }

    /** The constant part of the branch's current from its first end to its second. */
    double amps(int branch) {
        return amps[branch];
    }

    /** Current of a branch, from its first end to its second, at the voltage across it. */
    double amps(int branch, double branchVolts) {
        return siemens[branch] * branchVolts + amps[branch];
    }

    /** Nodes eliminated so far: a measure of work. */
    long eliminations() {
        return eliminations;
    }

    /** Eliminates all nodes. */
    void refactor() {
        addUpChanged();
        System.arraycopy(own, 0, values, 0, own.length);
        addCurved();
        for (int group = 0; group < scheme.groupMembers.length; group++) {
            int first = scheme.groupStart[group];
            int end = scheme.groupStart[group + 1];
            switch (scheme.groupMembers[group]) {
                case 1 -> eliminateOfOne(first, end);
                case 2 -> eliminateOfTwo(first, end);
                default -> eliminate(first, end);
            }
        }
        eliminations += scheme.rankCount;
    }

    private void addUpChanged() {
        int currents = scheme.currentSlots();
        int joins = scheme.joinSlots();
        for (int c = 0; c < changedCount; c++) {
            int slot = changed[c];
            isChanged[slot] = false;
            boolean isCurrent = slot >= currents && slot < joins;
            double sum = 0;
            for (int t = addingStart[slot], end = addingStart[slot + 1]; t < end; t++) {
                int b = adding[t];
                sum += isCurrent ? (b >= 0 ? amps[b] : -amps[~b]) : siemens[b];
            }
            own[slot] = sum;
        }
        changedCount = 0;
    }

    private void addCurved() {
        double[] f = values;
        for (int b : curved) {
            f[conductanceSlot[b]] += siemens[b];
            f[drainedSlot[b]] -= amps[b];
            f[fedSlot[b]] += amps[b];
        }
    }

    /** Ranks first to end, each with one member: nothing to join. */
    private void eliminateOfOne(int first, int end) {
        double[] f = values;
        int[] members = scheme.members;
        int currents = scheme.currentSlots();
        int join = scheme.joinSlots() + scheme.memberStart[first];
        int at = scheme.memberStart[first];
        for (int k = first; k < end; k++) {
            double ground = f[k];
            double to = f[join++];
            int member = members[at++];
            double pivot = ground + to;
            double inverse = pivot == 0 ? 0 : 1 / pivot;
            inversePivot[k] = inverse;
            double share = to * inverse;
            f[member] += share * ground;
            f[currents + member] += share * f[currents + k];
        }
    }

    /** Ranks first to end, each with two members. */
    private void eliminateOfTwo(int first, int end) {
        double[] f = values;
        int[] members = scheme.members;
        int currents = scheme.currentSlots();
        int at = scheme.memberStart[first];
        int join = scheme.joinSlots() + at;
        int pair = scheme.pairStart[first];
        for (int k = first; k < end; k++) {
            double ground = f[k];
            double fed = f[currents + k];
            double toLow = f[join];
            double toHigh = f[join + 1];
            int low = members[at];
            int high = members[at + 1];
            double pivot = ground + toLow + toHigh;
            double inverse = pivot == 0 ? 0 : 1 / pivot;
            inversePivot[k] = inverse;
            double lowShare = toLow * inverse;
            double highShare = toHigh * inverse;
            f[low] += lowShare * ground;
            f[high] += highShare * ground;
            f[currents + low] += lowShare * fed;
            f[currents + high] += highShare * fed;
            f[scheme.pairSlot[pair++]] += lowShare * toHigh;
            at += 2;
            join += 2;
        }
    }

    /** Ranks first to end, of any number of members. */
    private void eliminate(int first, int end) {
        double[] f = values;
        int[] members = scheme.members;
        int currents = scheme.currentSlots();
        int joins = scheme.joinSlots();
        for (int k = first; k < end; k++) {
            int start = scheme.memberStart[k];
            int stop = scheme.memberStart[k + 1];
            double ground = f[k];
            double fed = f[currents + k];
            double pivot = ground;
            for (int m = start; m < stop; m++) {
                pivot += f[joins + m];
            }
            double inverse = pivot == 0 ? 0 : 1 / pivot;
            inversePivot[k] = inverse;
            int pair = scheme.pairStart[k];
            for (int m = start; m < stop; m++) {
                double share = f[joins + m] * inverse;
                f[members[m]] += share * ground;
                f[currents + members[m]] += share * fed;
                for (int other = m + 1; other < stop; other++) {
                    f[scheme.pairSlot[pair++]] += share * f[joins + other];
                }
            }
        }
    }

    /**
     * Voltage of every rank; the entry after the last stays 0, the chassis. A floating island's last rank stands at 0 V.
     */
    void backSubstitute(double[] volts) {
        backSubstituteWatched(volts);
        backSubstituteRest(volts);
    }

    /** Voltage of the ranks that are not watched, once the watched are known. */
    void backSubstituteRest(double[] volts) {
        for (int group = scheme.groupMembers.length - 1; group >= 0; group--) {
            backSubstitute(
                    volts, scheme.groupWatchedEnd[group], scheme.groupStart[group + 1], scheme.groupMembers[group]);
        }
    }

    /** Voltage of the watched ranks only. */
    void backSubstituteWatched(double[] volts) {
        for (int group = scheme.groupMembers.length - 1; group >= 0; group--) {
            backSubstitute(volts, scheme.groupStart[group], scheme.groupWatchedEnd[group], scheme.groupMembers[group]);
        }
    }

    /** Ranks first to end, each with so many members. */
    private void backSubstitute(double[] volts, int first, int end, int count) {
        double[] f = values;
        int[] members = scheme.members;
        int current = scheme.currentSlots() + first;
        int at = scheme.memberStart[first];
        int join = scheme.joinSlots() + at;
        if (count == 1) {
            for (int k = first; k < end; k++) {
                volts[k] = (f[current++] + f[join++] * volts[members[at++]]) * inversePivot[k];
            }
        } else if (count == 2) {
            for (int k = first; k < end; k++) {
                volts[k] = (f[current++] + f[join] * volts[members[at]] + f[join + 1] * volts[members[at + 1]])
                        * inversePivot[k];
                at += 2;
                join += 2;
            }
        } else {
            for (int k = first; k < end; k++) {
                double sum = f[current++];
                for (int m = 0; m < count; m++) {
                    sum += f[join++] * volts[members[at++]];
                }
                volts[k] = sum * inversePivot[k];
            }
        }
    }
}
