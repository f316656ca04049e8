package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * In what order nodes are eliminated and where each number of the elimination lives. A node's <em>rank</em> is its place in
 * that order; its <em>members</em> are the higher ranks it meets, directly or because eliminating lower ones joins them.
 *
 * <p>Every rank has at least {@link #FEW} members; the chassis stands in for those that are missing. Ranks come in four blocks, each a
 * plain loop: first those whose voltage is asked for with an answer only, then the <em>watched</em>, whose voltage is asked for
 * at every step, with all that these need; and of each first the ranks of few members, then those of more and all above them.
 *
 * <p>The numbers: for every rank the conductance to the chassis, then for every rank the current fed in, then for every rank
 * its joins with its members. The chassis has the rank after the last. Immutable, made once a network.
 */
final class EliminationScheme {
    /** Nodes with a voltage of their own: all but the chassis. */
    final int rankCount;

    /** Rank of every node; of node 0, the chassis, the one after the last. */
    final int[] rankOfNode;

    /** Members of most ranks. */
    static final int FEW = 2;

    /** Where the blocks begin but for the first: ranks of many members, watched ranks, and watched ones of many members. */
    final int manyStart;

    final int watchedStart;
    final int watchedManyStart;

    /** Where a rank's members begin in {@link #members}, with one more at the end. Members ascend. */
    final int[] memberStart;

    final int[] members;

    private final int[] lowOfJoin;

    /** Where the pairs of a rank's members begin in {@link #joinInbox}, with one more at the end. */
    final int[] pairStart;

    /**
     * What eliminating lower ranks adds to a rank or to a join lies together: where the <em>inbox</em> of each begins, with one
     * more at the end; and for each entry of {@link #members}, and for each pair of members, its place in the inbox it adds to.
     */
    final int[] rankInboxStart;

    final int[] joinInboxStart;
    final int[] rankInbox;
    final int[] joinInbox;

    /**
     * Lays out the elimination.
     *
     * @param nodeCount nodes with the chassis, which is node 0
     * @param ends pairs of nodes that some conductance may join
     * @param watched whether a node's voltage is asked for at every step
     */
    EliminationScheme(int nodeCount, List<int[]> ends, boolean[] watched) {
        rankCount = nodeCount - 1;
        List<int[]> joins = ends.stream()
                .filter(pair -> pair[0] != 0 && pair[1] != 0 && pair[0] != pair[1])
                .map(pair -> new int[] {pair[0] - 1, pair[1] - 1})
                .toList();
        int[] order = EliminationOrder.minimumFill(rankCount, joins);
        List<NavigableSet<Integer>> structure = structure(order, joins);
        int[] levels = levels(structure);
        boolean[] needed = new boolean[rankCount];
        for (int k = 0; k < rankCount; k++) {
            needed[k] |= watched[order[k] + 1];
            if (needed[k]) {
                structure.get(k).forEach(member -> needed[member] = true);
            }
        }
        boolean[] many = new boolean[rankCount];
        for (int k = 0; k < rankCount; k++) {
            many[k] |= structure.get(k).size() > FEW;
            if (many[k]) {
                structure.get(k).forEach(member -> many[member] = true);
            }
        }
        int[] sorted = IntStream.range(0, rankCount)
                .boxed()
                .sorted(Comparator.<Integer, Boolean>comparing(k -> needed[k])
                        .thenComparing(k -> many[k])
                        .thenComparingInt(k -> levels[k])
                        .thenComparingInt(k -> k))
                .mapToInt(Integer::intValue)
                .toArray();
        watchedStart =
                (int) IntStream.range(0, rankCount).filter(k -> !needed[k]).count();
        manyStart = (int) IntStream.range(0, rankCount)
                .filter(k -> !needed[k] && !many[k])
                .count();
        watchedManyStart = rankCount
                - (int) IntStream.range(0, rankCount)
                        .filter(k -> needed[k] && many[k])
                        .count();
        int[] rankOf = new int[rankCount];
        rankOfNode = new int[nodeCount];
        rankOfNode[0] = rankCount;
        for (int rank = 0; rank < rankCount; rank++) {
            rankOf[sorted[rank]] = rank;
            rankOfNode[order[sorted[rank]] + 1] = rank;
        }
        memberStart = new int[rankCount + 1];
        IntList all = new IntList();
        for (int rank = 0; rank < rankCount; rank++) {
            int k = sorted[rank];
            int[] own = structure.get(k).stream()
                    .mapToInt(member -> rankOf[member])
                    .sorted()
                    .toArray();
            all.addAll(own);
            for (int missing = own.length; missing < FEW; missing++) {
                all.add(rankCount);
            }
            memberStart[rank + 1] = all.size();
        }
        members = all.toArray();
        lowOfJoin = new int[members.length];
        for (int k = 0; k < rankCount; k++) {
            Arrays.fill(lowOfJoin, memberStart[k], memberStart[k + 1], k);
        }
        pairStart = new int[rankCount + 1];
        int[] ofRank = new int[rankCount + 2];
        int[] ofJoin = new int[members.length + 2];
        IntList pairJoins = new IntList();
        for (int k = 0; k < rankCount; k++) {
            for (int i = memberStart[k]; i < memberStart[k + 1]; i++) {
                ofRank[members[i] + 1]++;
                for (int j = i + 1; j < memberStart[k + 1]; j++) {
                    int join =
                            members[j] == rankCount ? members.length : joinSlot(members[i], members[j]) - joinSlots();
                    pairJoins.add(join);
                    ofJoin[join + 1]++;
                }
            }
            pairStart[k + 1] = pairJoins.size();
        }
        Arrays.parallelPrefix(ofRank, Integer::sum);
        Arrays.parallelPrefix(ofJoin, Integer::sum);
        rankInboxStart = ofRank;
        joinInboxStart = ofJoin;
        rankInbox = places(members, ofRank);
        joinInbox = places(pairJoins.toArray(), ofJoin);
    }

    /** For each sender in turn, its place in the inbox of its receiver. */
    private static int[] places(int[] receivers, int[] inboxStart) {
        int[] next = inboxStart.clone();
        return Arrays.stream(receivers).map(receiver -> next[receiver]++).toArray();
    }

    /** Slots that mean something. Currents into the chassis and branches from a node to itself need none. */
    int slotCount() {
        return joinSlots() + members.length;
    }

    /** Slot of the current fed into a rank: so many after its own number, which is the slot of its conductance to the chassis. */
    int currentSlots() {
        return rankCount + 1;
    }

    /** Slot of the first join; the others follow as {@link #members} has them. */
    int joinSlots() {
        return 2 * (rankCount + 1);
    }

    /** Slot of the conductance between two ranks, of which one may be the chassis; {@code nowhere} for a rank with itself. */
    int slotBetween(int a, int b, int nowhere) {
        int low = Math.min(a, b);
        int high = Math.max(a, b);
        if (low == high) {
            return nowhere;
        }
        return high == rankCount ? low : joinSlot(low, high);
    }

    /** Slot of the current fed into one end of a branch; {@code nowhere} for the chassis or if the other end is the same. */
    int slotInto(int end, int otherEnd, int nowhere) {
        return end == otherEnd || end == rankCount ? nowhere : currentSlots() + end;
    }

    /** The rank with whose elimination a slot is used up. */
    int ownerOf(int slot) {
        return slot < currentSlots()
                ? slot
                : slot < joinSlots() ? slot - currentSlots() : lowOfJoin[slot - joinSlots()];
    }

    private int joinSlot(int low, int high) {
        int found = Arrays.binarySearch(members, memberStart[low], memberStart[low + 1], high);
        if (found < 0) {
            throw new IllegalStateException("rank " + high + " is no member of rank " + low);
        }
        return joinSlots() + found;
    }

    /** For each step of the order, the later steps it meets. */
    private static List<NavigableSet<Integer>> structure(int[] order, List<int[]> joins) {
        int[] step = new int[order.length];
        List<NavigableSet<Integer>> structure = new ArrayList<>();
        for (int k = 0; k < order.length; k++) {
            step[order[k]] = k;
            structure.add(new TreeSet<>());
        }
        for (int[] join : joins) {
            int a = step[join[0]];
            int b = step[join[1]];
            structure.get(Math.min(a, b)).add(Math.max(a, b));
        }
        for (NavigableSet<Integer> set : structure) {
            if (!set.isEmpty()) {
                structure.get(set.first()).addAll(set.tailSet(set.first(), false));
            }
        }
        return structure;
    }

    /** Each step's level: above those of all steps that meet it. */
    private static int[] levels(List<NavigableSet<Integer>> structure) {
        int[] levels = new int[structure.size()];
        for (int k = 0; k < levels.length; k++) {
            if (!structure.get(k).isEmpty()) {
                int parent = structure.get(k).first();
                levels[parent] = Math.max(levels[parent], levels[k] + 1);
            }
        }
        return levels;
    }
}
