package org.loomproof.workshop.prover.product;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** States of vehicle and controller found breadth first, each with the state it was first found from. */
final class Search {

    /** Beyond this many states a search stops and says so. */
    static final int MOST_STATES = 1 << 22;

    /** Whether a step may be taken. */
    @FunctionalInterface
    interface Rule {
        boolean permits(Product.Place from, Step step);
    }

    private final Product product;
    private final Rule rule;
    private int[] states = new int[1 << 10];
    private int[] foundFrom = new int[1 << 10];
    private int found;
    private long transitions;
    private boolean complete;

    private Search(Product product, Rule rule) {
        this.product = product;
        this.rule = rule;
    }

    /** Searches until nothing new is reached, or no further than that many states. */
    static Search of(Product product, Rule rule, int most) {
        Search search = new Search(product, rule);
        if (product.size() <= Integer.MAX_VALUE) {
            search.run(most);
        }
        return search;
    }

    private void run(int most) {
        BitSet known = new BitSet();
        add(product.start(), -1);
        known.set(product.start());
        complete = !product.isCutShort();
        for (int next = 0; next < found; next++) {
            int from = next;
            Product.Place at = product.place(states[next]);
            product.next(states[next], (step, state) -> {
                if (rule.permits(at, step)) {
                    transitions++;
                    if (!known.get(state)) {
                        if (found < most) {
                            known.set(state);
                            add(state, from);
                        } else {
                            complete = false;
                        }
                    }
                }
            });
        }
    }

    private void add(int state, int from) {
        if (found == states.length) {
            states = Arrays.copyOf(states, 2 * found);
            foundFrom = Arrays.copyOf(foundFrom, 2 * found);
        }
        states[found] = state;
        foundFrom[found++] = from;
    }

    /** How many states were reached. */
    int size() {
        return found;
    }

    /** How many steps were taken between them. */
    long transitions() {
        return transitions;
    }

    /** Whether nothing further can be reached. */
    boolean isComplete() {
        return complete;
    }

    /** The state found as the k-th, those with the fewest steps first. */
    Product.Place place(int k) {
        return product.place(states[k]);
    }

    /** A shortest list of steps to the state found as the k-th. */
    List<Step> stepsTo(int k) {
        List<Step> steps = new ArrayList<>();
        for (int at = k; foundFrom[at] >= 0; at = foundFrom[at]) {
            steps.add(step(foundFrom[at], states[at]));
        }
        return steps.reversed();
    }

    private Step step(int from, int to) {
        List<Step> taken = new ArrayList<>(1);
        Product.Place at = place(from);
        product.next(states[from], (step, state) -> {
            if (state == to && taken.isEmpty() && rule.permits(at, step)) {
                taken.add(step);
            }
        });
        return taken.getFirst();
    }
}
