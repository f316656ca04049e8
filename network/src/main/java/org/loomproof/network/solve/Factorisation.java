package org.loomproof.network.solve;

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
    private final BranchSums sums;

    /** What branches add to each slot, and on top of it what elimination adds. */
    private final double[] values;

    private final double[] inversePivot;
    private long eliminations;

    Factorisation(Layout layout, BranchSums sums) {
        this.scheme = layout.scheme;
        this.sums = sums;
        values = new double[layout.slots.withSinks];
        inversePivot = new double[scheme.rankCount];
    }

    /** Nodes eliminated so far: a measure of work. */
    long eliminations() {
        return eliminations;
    }

    /** Eliminates all nodes. */
    void refactor() {
        sums.write(values);
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
