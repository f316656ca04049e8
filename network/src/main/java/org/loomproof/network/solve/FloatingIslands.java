package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import org.loomproof.network.part.Node;

/** Which ranks nothing joins to the chassis: neither a straight branch nor a curve with a slope worth the name. */
final class FloatingIslands {
    /** Below this slope a curved branch counts as blocked: a hundredth of a voltmeter's conductance. */
    static final double BLOCKED_SIEMENS = 1e-9;

    private final int[] root;

    /**
     * Joins ranks over all conducting branches.
     *
     * @param conducts whether the branch of a number joins its ends
     */
    FloatingIslands(Layout layout, IntPredicate conducts) {
        root = new int[layout.rankCount + 1];
        for (int k = 0; k < root.length; k++) {
            root[k] = k;
        }
        for (int b = 0; b < layout.branchCount; b++) {
            if (conducts.test(b)) {
                int x = rootOf(layout.from[b]);
                int y = rootOf(layout.to[b]);
                root[Math.min(x, y)] = Math.max(x, y);
            }
        }
    }

    private int rootOf(int rank) {
        int at = rank;
        while (root[at] != at) {
            at = root[at];
        }
        return at;
    }

    boolean isFloating(int rank) {
        return rootOf(rank) != root.length - 1;
    }

    List<Set<Node>> named(Layout layout) {
        Map<Integer, Set<Node>> byRoot = new LinkedHashMap<>();
        List<Node> nodes = layout.network.nodes();
        for (int n = 0; n < nodes.size(); n++) {
            int rank = layout.rankOfNode[n];
            if (isFloating(rank)) {
                byRoot.computeIfAbsent(rootOf(rank), r -> new LinkedHashSet<>()).add(nodes.get(n));
            }
        }
        return new ArrayList<>(byRoot.values());
    }
}
