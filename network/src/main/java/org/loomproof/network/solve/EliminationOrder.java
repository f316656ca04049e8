package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The order in which nodes are eliminated: greedy minimum fill, ties to the lower degree, then to the lower node number.
 * Eliminating a node joins all its neighbours; a node is taken next when that adds the fewest new joins. Looms are nearly
 * trees, where this gives fronts of three or four nodes.
 */
final class EliminationOrder {
    private EliminationOrder() {}

    /**
     * Node numbers in elimination order.
     *
     * @param nodeCount nodes 0 to nodeCount - 1, the reference left out
     * @param joins pairs of nodes that some conductance may join
     */
    static int[] minimumFill(int nodeCount, List<int[]> joins) {
        List<NavigableSet<Integer>> neighbours = new ArrayList<>(nodeCount);
        for (int k = 0; k < nodeCount; k++) {
            neighbours.add(new TreeSet<>());
        }
        for (int[] join : joins) {
            neighbours.get(join[0]).add(join[1]);
            neighbours.get(join[1]).add(join[0]);
        }
        int[] height = new int[nodeCount];
        long[] cost = new long[nodeCount];
        TreeSet<Long> queue = new TreeSet<>();
        for (int k = 0; k < nodeCount; k++) {
            cost[k] = cost(k, neighbours, height[k]);
            queue.add(cost[k]);
        }
        int[] order = new int[nodeCount];
        for (int step = 0; step < nodeCount; step++) {
            int node = (int) (queue.pollFirst() & NODE_MASK);
            order[step] = node;
            for (int other : neighbours.get(node)) {
                height[other] = Math.max(height[other], height[node] + 1);
            }
            NavigableSet<Integer> touched = eliminate(node, neighbours);
            for (int other : touched) {
                queue.remove(cost[other]);
                cost[other] = cost(other, neighbours, height[other]);
                queue.add(cost[other]);
            }
        }
        return order;
    }

    private static final int NODE_BITS = 20;
    private static final int HEIGHT_BITS = 20;
    private static final long NODE_MASK = (1L << NODE_BITS) - 1;
    private static final long GROWTH_LIMIT = 1L << 21;

    /** Growth, height and node number in one comparable number. */
    private static long cost(int node, List<NavigableSet<Integer>> neighbours, int height) {
        NavigableSet<Integer> around = neighbours.get(node);
        long degree = around.size();
        long fill = degree > FILL_COUNTED_UP_TO ? degree * degree / 2 : fill(around, neighbours);
        long growth = Math.max(-GROWTH_LIMIT, Math.min(fill - degree, GROWTH_LIMIT)) + GROWTH_LIMIT;
        return (growth << (NODE_BITS + HEIGHT_BITS)) | ((long) height << NODE_BITS) | node;
    }

    /** Counting fill at a bus of hundreds of neighbours costs more than it tells: it goes late anyway. */
    private static final int FILL_COUNTED_UP_TO = 64;

    private static long fill(NavigableSet<Integer> around, List<NavigableSet<Integer>> neighbours) {
        long missing = 0;
        for (int a : around) {
            for (int b : around.tailSet(a, false)) {
                if (!neighbours.get(a).contains(b)) {
                    missing++;
                }
            }
        }
        return missing;
    }

    /** Joins all neighbours of the node and takes it out; the nodes whose cost may have changed. */
    private static NavigableSet<Integer> eliminate(int node, List<NavigableSet<Integer>> neighbours) {
        NavigableSet<Integer> around = neighbours.get(node);
        NavigableSet<Integer> touched = new TreeSet<>(around);
        for (int a : around) {
            neighbours.get(a).remove(node);
            boolean grew = false;
            for (int b : around) {
                if (a != b && neighbours.get(a).add(b)) {
                    grew = true;
                }
            }
            if (grew && neighbours.get(a).size() <= FILL_COUNTED_UP_TO) {
                touched.addAll(neighbours.get(a));
            }
        }
        return touched;
    }
}
