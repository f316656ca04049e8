package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Where each number of the factorisation lives. A <em>front</em> belongs to one rank k: k itself and the ranks above it that
 * k meets once all lower ranks are eliminated (its members). In the flat value array a front with s members holds
 *
 * <pre>
 * [ ground of k | current into k | s joins k-member | s grounds | s currents | s (s - 1) / 2 joins member-member ]
 *   pivot row .......................................  what elimination passes on to the parent front ............
 * </pre>
 *
 * The parent of a front is its lowest member. Immutable, made once a network.
 */
final class FrontLayout {
    static final int GROUND = 0;
    static final int CURRENT = 1;
    static final int JOINS = 2;

    final int frontCount;

    /** Where a front's values begin; one more at the end. */
    final int[] valueStart;

    /** Where a front's members begin in {@link #members}; one more at the end. Members ascend. */
    final int[] memberStart;

    final int[] members;
    final int[] parent;

    /** Child fronts of each front, ascending. */
    final int[][] children;

    /** For each front, where each value it passes on is added, in the value array. */
    final int[][] passTo;

    /** Branches of each front: those whose lower end it is. */
    final int[][] branches;

    /** Of each branch: its front, or -1 when it joins a node to itself; and the values its conductance and current go to. */
    final int[] frontOf;

    final int[] conductanceAt;
    final int[] lowerCurrentAt;

    /** -1 when the upper end is the chassis. */
    final int[] upperCurrentAt;

    FrontLayout(int rankCount, int[] from, int[] to) {
        frontCount = rankCount;
        List<NavigableSet<Integer>> structure = structure(rankCount, from, to);
        parent = new int[rankCount];
        memberStart = new int[rankCount + 1];
        valueStart = new int[rankCount + 1];
        List<List<Integer>> childLists = new ArrayList<>();
        for (int k = 0; k < rankCount; k++) {
            int s = structure.get(k).size();
            memberStart[k + 1] = memberStart[k] + s;
            valueStart[k + 1] = valueStart[k] + JOINS + s + passedOn(s);
            parent[k] = s == 0 ? -1 : structure.get(k).first();
            childLists.add(new ArrayList<>());
        }
        members = structure.stream()
                .flatMapToInt(set -> set.stream().mapToInt(Integer::intValue))
                .toArray();
        for (int k = 0; k < rankCount; k++) {
            if (parent[k] >= 0) {
                childLists.get(parent[k]).add(k);
            }
        }
        children = toArrays(childLists);
        passTo = new int[rankCount][];
        for (int k = 0; k < rankCount; k++) {
            passTo[k] = passTo(k);
        }
        frontOf = new int[from.length];
        conductanceAt = new int[from.length];
        lowerCurrentAt = new int[from.length];
        upperCurrentAt = new int[from.length];
        branches = placeBranches(from, to);
    }

    int memberCount(int front) {
        return memberStart[front + 1] - memberStart[front];
    }

    private static int passedOn(int s) {
        return 2 * s + s * (s - 1) / 2;
    }

    /** Members of each front: the higher ranks met directly, and the members of child fronts. */
    private static List<NavigableSet<Integer>> structure(int rankCount, int[] from, int[] to) {
        List<NavigableSet<Integer>> structure = new ArrayList<>();
        for (int k = 0; k < rankCount; k++) {
            structure.add(new TreeSet<>());
        }
        for (int b = 0; b < from.length; b++) {
            int lower = Math.min(from[b], to[b]);
            int upper = Math.max(from[b], to[b]);
            if (upper < rankCount && lower != upper) {
                structure.get(lower).add(upper);
            }
        }
        for (int k = 0; k < rankCount; k++) {
            NavigableSet<Integer> set = structure.get(k);
            if (!set.isEmpty()) {
                int parent = set.first();
                structure.get(parent).addAll(set.tailSet(parent, false));
            }
        }
        return structure;
    }

    private int[] passTo(int front) {
        int s = memberCount(front);
        int[] target = new int[passedOn(s)];
        if (s == 0) {
            return target;
        }
        int at = 0;
        for (int i = 0; i < s; i++) {
            target[at++] = groundAt(parent[front], member(front, i));
        }
        for (int i = 0; i < s; i++) {
            target[at++] = currentAt(parent[front], member(front, i));
        }
        for (int i = 0; i < s; i++) {
            for (int j = i + 1; j < s; j++) {
                target[at++] = joinAt(parent[front], member(front, i), member(front, j));
            }
        }
        return target;
    }

    private int member(int front, int i) {
        return members[memberStart[front] + i];
    }

    private int place(int front, int rank) {
        int found = Arrays.binarySearch(members, memberStart[front], memberStart[front + 1], rank);
        if (found < 0) {
            throw new IllegalStateException("rank " + rank + " is no member of front " + front);
        }
        return found - memberStart[front];
    }

    private int groundAt(int front, int rank) {
        return rank == front
                ? valueStart[front] + GROUND
                : valueStart[front] + JOINS + memberCount(front) + place(front, rank);
    }

    private int currentAt(int front, int rank) {
        return rank == front
                ? valueStart[front] + CURRENT
                : valueStart[front] + JOINS + 2 * memberCount(front) + place(front, rank);
    }

    private int joinAt(int front, int low, int high) {
        if (low == front) {
            return valueStart[front] + JOINS + place(front, high);
        }
        int s = memberCount(front);
        int i = place(front, low);
        int j = place(front, high);
        return valueStart[front] + JOINS + 3 * s + i * s - i * (i + 1) / 2 + j - i - 1;
    }

    private int[][] placeBranches(int[] from, int[] to) {
        List<List<Integer>> byFront = new ArrayList<>();
        for (int k = 0; k < frontCount; k++) {
            byFront.add(new ArrayList<>());
        }
        for (int b = 0; b < from.length; b++) {
            int lower = Math.min(from[b], to[b]);
            int upper = Math.max(from[b], to[b]);
            if (lower == upper) {
                frontOf[b] = -1;
                continue;
            }
            frontOf[b] = lower;
            byFront.get(lower).add(b);
            boolean grounded = upper == frontCount;
            conductanceAt[b] = grounded ? groundAt(lower, lower) : joinAt(lower, lower, upper);
            lowerCurrentAt[b] = currentAt(lower, lower);
            upperCurrentAt[b] = grounded ? -1 : currentAt(lower, upper);
        }
        return toArrays(byFront);
    }

    private static int[][] toArrays(List<List<Integer>> lists) {
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}
