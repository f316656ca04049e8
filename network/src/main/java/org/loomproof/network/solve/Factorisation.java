package org.loomproof.network.solve;

/**
 * Star-mesh elimination of a network of conductances.
 *
 * <p>Eliminating node k with conductances c(k,j) to its neighbours and c(k,0) to the chassis replaces the star by a mesh:
 * with d = c(k,0) + sum of c(k,j), every pair gains c(k,i) c(k,j) / d, every ground gains c(k,i) c(k,0) / d, and the current
 * fed into k is shared out as c(k,i) / d. No conductance is ever subtracted, so 1 mΩ beside 100 MΩ loses nothing, and d is
 * exactly zero only where no conductance is left: a floating island.
 *
 * <p>What a node gains is kept by the node it comes from, so that only nodes with a change at themselves or below are
 * eliminated again, and only as far up as anything changes.
 */
final class Factorisation {
    private final EliminationScheme scheme;
    private final BranchSums sums;

    /** What elimination adds to each rank, conductance to the chassis and current fed in by turns, and to each join. */
    private final double[] toRanks;

    private final double[] toJoins;

    /** Per member of a rank, the share of its voltage; per rank, the voltage it has by its own current. */
    private final double[] share;

    private final double[] fedVolts;
    private final double[] inversePivot;

    /** Of watched ranks, a bound of the resistance to the chassis; see {@link #backSubstituteWatched}. */
    final double[] ohms;

    private long eliminations;

    Factorisation(Layout layout, BranchSums sums) {
        this.scheme = layout.scheme;
        this.sums = sums;
        toRanks = new double[2 * scheme.rankInbox.length];
        toJoins = new double[scheme.joinInbox.length];
        share = new double[scheme.members.length];
        fedVolts = new double[scheme.rankCount];
        inversePivot = new double[scheme.rankCount];
        ohms = new double[scheme.rankCount + 1];
    }

    /** Nodes eliminated so far: a measure of work. */
    long eliminations() {
        return eliminations;
    }

    /** Eliminates all nodes touched since the last time, and those above them that this changes. */
    void refactor() {
        double[] own = sums.addUp();
        RankSet touched = sums.touched;
        for (int k = touched.pollFirst(); k >= 0; k = touched.pollFirst()) {
            eliminations++;
            eliminate(k, own, touched);
        }
    }

    /** Eliminates one rank; members for which that changes anything are touched. */
    private void eliminate(int k, double[] own, RankSet touched) {
        double ground = own[k];
        double fed = own[scheme.currentSlots() + k];
        for (int i = 2 * scheme.rankInboxStart[k], end = 2 * scheme.rankInboxStart[k + 1]; i < end; i += 2) {
            ground += toRanks[i];
            fed += toRanks[i + 1];
        }
        int start = scheme.memberStart[k];
        int stop = scheme.memberStart[k + 1];
        if (stop > start + EliminationScheme.FEW) {
            eliminateOfMany(k, own, ground, fed, touched);
        } else if (scheme.members[start + 1] == scheme.rankCount) {
            double join = join(start, own);
            double inverse = inverse(k, ground + join, fed);
            share[start] = join * inverse;
            if (pass(start, join * inverse, ground, fed)) {
                touched.add(scheme.members[start]);
            }
        } else {
            double low = join(start, own);
            double high = join(start + 1, own);
            double inverse = inverse(k, ground + low + high, fed);
            share[start] = low * inverse;
            share[start + 1] = high * inverse;
            boolean isPassed = pass(start, low * inverse, ground, fed);
            boolean isJoined = put(toJoins, scheme.joinInbox[scheme.pairStart[k]], low * inverse * high);
            if (isPassed || isJoined) {
                touched.add(scheme.members[start]);
            }
            if (pass(start + 1, high * inverse, ground, fed)) {
                touched.add(scheme.members[start + 1]);
            }
        }
    }

    /** Of many members nearly all change, so all are touched. */
    private void eliminateOfMany(int k, double[] own, double ground, double fed, RankSet touched) {
        int start = scheme.memberStart[k];
        int stop = scheme.memberStart[k + 1];
        double pivot = ground;
        for (int m = start; m < stop; m++) {
            share[m] = join(m, own);
            pivot += share[m];
        }
        double inverse = inverse(k, pivot, fed);
        int pair = scheme.pairStart[k];
        for (int m = start; m < stop; m++) {
            double part = share[m] * inverse;
            int place = 2 * scheme.rankInbox[m];
            toRanks[place] = part * ground;
            toRanks[place + 1] = part * fed;
            for (int other = m + 1; other < stop; other++) {
                toJoins[scheme.joinInbox[pair++]] = part * share[other];
            }
            share[m] = part;
            touched.add(scheme.members[m]);
        }
    }

    /** Conductance between a rank and one of its members. */
    private double join(int m, double[] own) {
        double join = own[scheme.joinSlots() + m];
        for (int i = scheme.joinInboxStart[m], end = scheme.joinInboxStart[m + 1]; i < end; i++) {
            join += toJoins[i];
        }
        return join;
    }

    private double inverse(int k, double pivot, double fed) {
        double inverse = pivot == 0 ? 0 : 1 / pivot;
        inversePivot[k] = inverse;
        fedVolts[k] = fed * inverse;
        return inverse;
    }

    /** Passes a member its part of what goes to the chassis and of what is fed in; whether it is another than before. */
    private boolean pass(int m, double part, double ground, double fed) {
        int place = 2 * scheme.rankInbox[m];
        boolean isGroundOther = put(toRanks, place, part * ground);
        boolean isFedOther = put(toRanks, place + 1, part * fed);
        return isGroundOther || isFedOther;
    }

    private static boolean put(double[] inbox, int place, double value) {
        boolean isOther = inbox[place] != value;
        inbox[place] = value;
        return isOther;
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
        int[] members = scheme.members;
        for (int k = scheme.watchedStart - 1; k >= scheme.manyStart; k--) {
            double sum = fedVolts[k];
            for (int m = scheme.memberStart[k], stop = scheme.memberStart[k + 1]; m < stop; m++) {
                sum += share[m] * volts[members[m]];
            }
            volts[k] = sum;
        }
        int at = scheme.memberStart[scheme.manyStart];
        for (int k = scheme.manyStart - 1; k >= 0; k--) {
            at -= 2;
            volts[k] = fedVolts[k] + share[at] * volts[members[at]] + share[at + 1] * volts[members[at + 1]];
        }
    }

    /**
     * Voltage of the watched ranks only, and for each of them a resistance to the chassis that is no less than the true one:
     * that of rank k is 1 / d plus s Z s with the shares s of its members and their resistances Z, which is at most the sum of
     * s(j) Z(j, j) as no share is below zero nor all together above one. Too small at a floating island.
     */
    void backSubstituteWatched(double[] volts) {
        int[] members = scheme.members;
        double[] bound = ohms;
        for (int k = scheme.rankCount - 1; k >= scheme.watchedManyStart; k--) {
            double sum = fedVolts[k];
            double sumOhms = inversePivot[k];
            for (int m = scheme.memberStart[k], stop = scheme.memberStart[k + 1]; m < stop; m++) {
                int member = members[m];
                double part = share[m];
                sum += part * volts[member];
                sumOhms += part * bound[member];
            }
            volts[k] = sum;
            bound[k] = sumOhms;
        }
        int at = scheme.memberStart[scheme.watchedManyStart];
        for (int k = scheme.watchedManyStart - 1; k >= scheme.watchedStart; k--) {
            at -= 2;
            int low = members[at];
            int high = members[at + 1];
            double partLow = share[at];
            double partHigh = share[at + 1];
            volts[k] = fedVolts[k] + partLow * volts[low] + partHigh * volts[high];
            bound[k] = inversePivot[k] + partLow * bound[low] + partHigh * bound[high];
        }
    }
}
