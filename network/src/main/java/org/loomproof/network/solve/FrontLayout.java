package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Where each number of the factorisation lives. A <em>front</em> either eliminates one rank, or only gathers what up to
 * {@value #FAN_IN} lower fronts pass on, so that a bus with a hundred branches need not add them all again when one changes.
 *
 * <p>A front's <em>members</em> are the higher ranks it meets. What it passes on to its parent is, for s members, s
 * conductances to the chassis, s currents fed in, and s (s - 1) / 2 conductances between members. A front that eliminates
 * rank k holds its pivot row before that. In the flat value array:
 *
 * <pre>
 * eliminating: [ ground of k | current into k | s joins k-member | grounds | currents | joins member-member ]
 * gathering:                                                     [ grounds | currents | joins member-member ]
 * </pre>
 *
 * Fronts are numbered so that children come before parents. The value array begins with a slot that is always zero and
 * three slots a branch: its conductance, its constant current, and that current negated. Every value of a front is then the
 * sum of a first source, copied, and further sources, added; so one front takes two plain loops. Immutable, made once a
 * network.
 */
final class FrontLayout {
    /** The slot that is always zero. */
    static final int ZERO = 0;

    static final int GROUND = 0;
    static final int CURRENT = 1;
    static final int JOINS = 2;

    private static final int FAN_IN = 4;

    /** A front being laid out. */
    private static final class Draft {
        final int rank;
        final int[] members;
        final List<Draft> children;
        int number;
        int start;

        Draft(int rank, int[] members, List<Draft> children) {
            this.rank = rank;
            this.members = members;
            this.children = children;
        }

        boolean gathers() {
            return rank < 0;
        }

        int passedStart() {
            return gathers() ? start : start + JOINS + members.length;
        }

        int end() {
            return passedStart() + 2 * members.length + members.length * (members.length - 1) / 2;
        }
    }

    final int frontCount;
    final int rankCount;
    final int valueCount;

    /** Rank each front eliminates, or -1 when it gathers; and the front of each rank. */
    final int[] rankOf;

    final int[] frontOf;

    /** Parent of each front, -1 for a root. */
    final int[] parent;

    /** Where a front's values begin, with one more at the end, and where among them what it passes on begins. */
    final int[] valueStart;

    final int[] passedStart;

    /** Where a rank's members begin in {@link #members}, with one more at the end. Members ascend. */
    final int[] memberStart;

    final int[] members;

    /** For every value, the slot it is first copied from: {@link #ZERO} when nothing adds to it. */
    final int[] copyFrom;

    /** Where a front's further additions begin, with one more at the end; and what is added to what. */
    final int[] addStart;

    final int[] addTo;
    final int[] addFrom;

    /** Of each branch: its front, or -1 when it joins a node to itself. */
    final int[] frontOfBranch;

    FrontLayout(int rankCount, int[] from, int[] to) {
        this.rankCount = rankCount;
        List<Draft> drafts = drafts(structure(rankCount, from, to));
        frontCount = drafts.size();
        rankOf = new int[frontCount];
        frontOf = new int[rankCount];
        parent = new int[frontCount];
        valueStart = new int[frontCount + 1];
        passedStart = new int[frontCount];
        memberStart = new int[rankCount + 1];
        addStart = new int[frontCount + 1];
        frontOfBranch = new int[from.length];
        Arrays.fill(parent, -1);
        IntList memberList = new IntList();
        int at = 1 + 3 * from.length;
        for (int f = 0; f < frontCount; f++) {
            Draft draft = drafts.get(f);
            draft.number = f;
            draft.start = at;
            valueStart[f] = at;
            passedStart[f] = draft.passedStart();
            at = draft.end();
            valueStart[f + 1] = at;
            rankOf[f] = draft.rank;
            if (!draft.gathers()) {
                frontOf[draft.rank] = f;
                memberList.addAll(draft.members);
                memberStart[draft.rank + 1] = memberList.size();
            }
            draft.children.forEach(child -> parent[child.number] = draft.number);
        }
        valueCount = at;
        members = memberList.toArray();
        List<IntList> sources = sources(drafts, from, to);
        copyFrom = new int[valueCount];
        IntList targets = new IntList();
        IntList added = new IntList();
        for (int f = 0; f < frontCount; f++) {
            for (int v = valueStart[f]; v < valueStart[f + 1]; v++) {
                int[] each = sources.get(v).toArray();
                copyFrom[v] = each.length == 0 ? ZERO : each[0];
                for (int k = 1; k < each.length; k++) {
                    targets.add(v);
                    added.add(each[k]);
                }
            }
            addStart[f + 1] = targets.size();
        }
        addTo = targets.toArray();
        addFrom = added.toArray();
    }

    /** Slot of a branch's conductance. */
    static int conductanceSlot(int branch) {
        return 1 + 3 * branch;
    }

    /** Slot of a branch's constant current, fed into its second end; the negated one, fed into its first, follows. */
    static int currentSlot(int branch) {
        return 2 + 3 * branch;
    }

    /** Every slot whose content adds to each value. */
    private List<IntList> sources(List<Draft> drafts, int[] from, int[] to) {
        List<IntList> sources = new ArrayList<>();
        for (int v = 0; v < valueCount; v++) {
            sources.add(new IntList());
        }
        for (int b = 0; b < from.length; b++) {
            frontOfBranch[b] = from[b] == to[b] ? -1 : frontOf[Math.min(from[b], to[b])];
            if (frontOfBranch[b] >= 0) {
                Draft draft = drafts.get(frontOfBranch[b]);
                int upper = Math.max(from[b], to[b]);
                boolean grounded = upper == rankCount;
                boolean forward = from[b] < to[b];
                int conductanceAt = grounded ? groundAt(draft, draft.rank) : joinAt(draft, draft.rank, upper);
                sources.get(conductanceAt).add(conductanceSlot(b));
                sources.get(currentAt(draft, draft.rank)).add(currentSlot(b) + (forward ? 1 : 0));
                if (!grounded) {
                    sources.get(currentAt(draft, upper)).add(currentSlot(b) + (forward ? 0 : 1));
                }
            }
        }
        for (Draft draft : drafts) {
            if (parent[draft.number] >= 0) {
                int passed = draft.passedStart();
                for (int target : passTo(draft, drafts.get(parent[draft.number]))) {
                    sources.get(target).add(passed++);
                }
            }
        }
        return sources;
    }

    /** Members of each rank: the higher ranks it meets directly, and those it comes to meet by elimination. */
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
                structure.get(set.first()).addAll(set.tailSet(set.first(), false));
            }
        }
        return structure;
    }

    /** All fronts, children first. */
    private static List<Draft> drafts(List<NavigableSet<Integer>> structure) {
        List<List<Draft>> waiting = new ArrayList<>();
        structure.forEach(set -> waiting.add(new ArrayList<>()));
        List<Draft> drafts = new ArrayList<>();
        for (int rank = 0; rank < structure.size(); rank++) {
            NavigableSet<Integer> set = structure.get(rank);
            List<Draft> children = gathered(waiting.get(rank), drafts);
            int[] members = set.stream().mapToInt(Integer::intValue).toArray();
            Draft draft = new Draft(rank, members, children);
            drafts.add(draft);
            if (!set.isEmpty()) {
                waiting.get(set.first()).add(draft);
            }
        }
        return drafts;
    }

    /** At most {@link #FAN_IN} fronts that stand for all of these. */
    private static List<Draft> gathered(List<Draft> children, List<Draft> drafts) {
        List<Draft> level = children;
        while (level.size() > FAN_IN) {
            List<Draft> next = new ArrayList<>();
            for (int k = 0; k < level.size(); k += FAN_IN) {
                List<Draft> group = List.copyOf(level.subList(k, Math.min(k + FAN_IN, level.size())));
                int[] members = group.stream()
                        .flatMapToInt(draft -> Arrays.stream(draft.members))
                        .distinct()
                        .sorted()
                        .toArray();
                Draft gather = new Draft(-1, members, group);
                drafts.add(gather);
                next.add(gather);
            }
            level = next;
        }
        return level;
    }

    /** For each value a front passes on, its place at the parent. */
    private static int[] passTo(Draft front, Draft parent) {
        IntList targets = new IntList();
        int[] m = front.members;
        for (int each : m) {
            targets.add(groundAt(parent, each));
        }
        for (int each : m) {
            targets.add(currentAt(parent, each));
        }
        for (int i = 0; i < m.length; i++) {
            for (int j = i + 1; j < m.length; j++) {
                targets.add(joinAt(parent, m[i], m[j]));
            }
        }
        return targets.toArray();
    }

    private static int memberPlace(Draft front, int rank) {
        int found = Arrays.binarySearch(front.members, rank);
        if (found < 0) {
            throw new IllegalStateException("rank " + rank + " is no member of front " + front.number);
        }
        return found;
    }

    private static int groundAt(Draft front, int rank) {
        return rank == front.rank ? front.start + GROUND : front.passedStart() + memberPlace(front, rank);
    }

    private static int currentAt(Draft front, int rank) {
        return rank == front.rank
                ? front.start + CURRENT
                : front.passedStart() + front.members.length + memberPlace(front, rank);
    }

    private static int joinAt(Draft front, int low, int high) {
        int j = memberPlace(front, high);
        if (low == front.rank) {
            return front.start + JOINS + j;
        }
        int s = front.members.length;
        int i = memberPlace(front, low);
        return front.passedStart() + 2 * s + i * s - i * (i + 1) / 2 + j - i - 1;
    }
}
