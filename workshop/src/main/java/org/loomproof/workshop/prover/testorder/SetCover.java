package org.loomproof.workshop.prover.testorder;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cheapest choice of sets that together hold every element that any of them holds, by branch and bound. The lower bound
 * counts elements no two of which share a set: each needs a set of its own.
 */
final class SetCover {

    /** Nodes of the search after which the best choice so far is given with its gap. */
    private static final long MOST_NODES = 200_000;

    private final List<BitSet> sets;
    private final long[] costs;
    private final BitSet elements = new BitSet();
    private List<Integer> best = List.of();
    private long bestCost;
    private long nodes;
    private boolean stopped;

    /**
     * A choice.
     *
     * @param chosen the places of the sets, ascending
     * @param cost of them together
     * @param atLeast what no choice can be cheaper than; the cost itself when the choice is proven best
     */
    record Choice(List<Integer> chosen, long cost, long atLeast) {
        boolean isProvenBest() {
            return cost == atLeast;
        }
    }

    private SetCover(List<BitSet> sets, long[] costs) {
        this.sets = sets;
        this.costs = costs;
        sets.forEach(elements::or);
    }

    /**
     * The cheapest choice.
     *
     * @param sets which elements each holds
     * @param costs of each, above zero
     */
    static Choice solve(List<BitSet> sets, long[] costs) {
        return solve(sets, costs, MOST_NODES);
    }

    /** The same with a bound of its own on the search. */
    static Choice solve(List<BitSet> sets, long[] costs, long mostNodes) {
        SetCover cover = new SetCover(sets, costs);
        cover.greedy();
        long root = cover.bound(cover.elements, cover.everySet());
        cover.search(cover.elements, cover.everySet(), new ArrayList<>(), 0, mostNodes);
        List<Integer> chosen = cover.best.stream().sorted().toList();
        return new Choice(chosen, cover.bestCost, cover.stopped ? Math.min(root, cover.bestCost) : cover.bestCost);
    }

    private BitSet everySet() {
        BitSet every = new BitSet();
        every.set(0, sets.size());
        return every;
    }

    private void search(BitSet open, BitSet usable, List<Integer> chosen, long cost, long mostNodes) {
        if (stopped || ++nodes > mostNodes) {
            stopped = true;
            return;
        }
        if (open.isEmpty()) {
            if (cost < bestCost) {
                bestCost = cost;
                best = List.copyOf(chosen);
            }
            return;
        }
        BitSet left = undominated(open, usable);
        if (cost + bound(open, left) >= bestCost) {
            return;
        }
        int element = hardest(open, left);
        List<Integer> holders = holders(element, left).stream()
                .sorted(Comparator.comparingDouble((Integer s) ->
                        (double) costs[s] / common(sets.get(s), open).cardinality()))
                .toList();
        BitSet without = (BitSet) left.clone();
        for (int set : holders) {
            without.clear(set);
            BitSet stillOpen = (BitSet) open.clone();
            stillOpen.andNot(sets.get(set));
            chosen.add(set);
            search(stillOpen, without, chosen, cost + costs[set], mostNodes);
            chosen.removeLast();
        }
    }

    /** The sets of which no other one holds as much for no more. */
    private BitSet undominated(BitSet open, BitSet usable) {
        BitSet left = (BitSet) usable.clone();
        List<Integer> each = usable.stream().boxed().toList();
        for (int one : each) {
            BitSet held = common(sets.get(one), open);
            boolean dominated = held.isEmpty();
            for (int k = 0; k < each.size() && !dominated; k++) {
                int other = each.get(k);
                dominated = other != one && left.get(other) && isBetter(other, one, held, open);
            }
            if (dominated) {
                left.clear(one);
            }
        }
        return left;
    }

    private boolean isBetter(int other, int one, BitSet held, BitSet open) {
        BitSet missing = (BitSet) held.clone();
        missing.andNot(sets.get(other));
        if (!missing.isEmpty() || costs[other] > costs[one]) {
            return false;
        }
        boolean alike =
                costs[other] == costs[one] && common(sets.get(other), open).equals(held);
        return !alike || other < one;
    }

    private static BitSet common(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.and(other);
        return both;
    }

    private List<Integer> holders(int element, BitSet usable) {
        return usable.stream().filter(s -> sets.get(s).get(element)).boxed().toList();
    }

    private int hardest(BitSet open, BitSet usable) {
        return open.stream()
                .boxed()
                .min(Comparator.comparingInt((Integer e) -> holders(e, usable).size()))
                .orElseThrow();
    }

    private long bound(BitSet open, BitSet usable) {
        long bound = 0;
        BitSet met = new BitSet();
        List<Integer> hardestFirst = open.stream()
                .boxed()
                .sorted(Comparator.comparingInt(
                        (Integer e) -> holders(e, usable).size()))
                .toList();
        for (int element : hardestFirst) {
            List<Integer> holders = holders(element, usable);
            if (holders.isEmpty()) {
                return Long.MAX_VALUE / 4; // what is left cannot hold it
            }
            if (holders.stream().noneMatch(met::get)) {
                bound += holders.stream().mapToLong(s -> costs[s]).min().orElseThrow();
                holders.forEach(met::set);
            }
        }
        return bound;
    }

    /** A first choice, for the search to better: always the set that holds most for its cost. */
    private void greedy() {
        BitSet open = (BitSet) elements.clone();
        List<Integer> chosen = new ArrayList<>();
        long cost = 0;
        while (!open.isEmpty()) {
            BitSet still = open;
            int next = IntStream.range(0, sets.size())
                    .boxed()
                    .min(Comparator.comparingDouble(s -> (double) costs[s]
                            / Math.max(common(sets.get(s), still).cardinality(), 1e-9)))
                    .orElseThrow();
            chosen.add(next);
            cost += costs[next];
            open.andNot(sets.get(next));
        }
        best = chosen;
        bestCost = cost;
    }
}
