package org.loomproof.workshop.prover.testorder;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The tests by which the finished car is passed.
 *
 * @param tests in the order in which they are done
 * @param noticedBy for each mishap, by its place, the places in {@code tests} of those that notice it
 * @param gap how many tests too many there may be at most; zero when the choice is proven smallest
 */
public record TestOrder(List<HandTest> tests, List<List<Integer>> noticedBy, int gap) {

    /** One test more outweighs any number of seconds. */
    private static final long ONE_TEST = 10_000_000;

    public TestOrder {
        tests = List.copyOf(tests);
        noticedBy = noticedBy.stream().map(List::copyOf).toList();
    }

    /** How long it takes, without the waiting between tests. */
    public int seconds() {
        return tests.stream().mapToInt(HandTest::seconds).sum();
    }

    /**
     * The smallest choice of tests, then the quickest, that notices all that any test notices. What a hand and an eye notice
     * is left to them; only for the rest is something unplugged, for what then remains a meter is taken, and for the last the
     * loom is measured dead.
     *
     * @param candidates all tests
     * @param notices for each of them the mishaps it notices
     * @param always tests that are done whatever they notice
     * @param mishaps how many there are
     */
    public static TestOrder of(
            List<HandTest> candidates, List<BitSet> notices, BitSet always, int mishaps, int armingSeconds) {
        BitSet chosen = (BitSet) always.clone();
        BitSet noticed = new BitSet();
        always.stream().forEach(t -> noticed.or(notices.get(t)));
        int gap = 0;
        for (HandTest.Kind kind : HandTest.Kind.values()) {
            List<Integer> these = new ArrayList<>();
            List<BitSet> sets = new ArrayList<>();
            for (int t = 0; t < candidates.size(); t++) {
                if (candidates.get(t).kind() == kind) {
                    BitSet more = (BitSet) notices.get(t).clone();
                    more.andNot(noticed);
                    these.add(t);
                    sets.add(more);
                }
            }
            long[] costs = these.stream()
                    .mapToLong(t -> ONE_TEST + candidates.get(t).seconds())
                    .toArray();
            SetCover.Choice choice = SetCover.solve(sets, costs);
            gap += (int) (choice.cost() / ONE_TEST - choice.atLeast() / ONE_TEST);
            for (int k : choice.chosen()) {
                chosen.set(these.get(k));
                noticed.or(notices.get(these.get(k)));
            }
        }
        return ordered(candidates, notices, chosen, mishaps, armingSeconds, gap);
    }

    private static TestOrder ordered(
            List<HandTest> candidates, List<BitSet> notices, BitSet chosen, int mishaps, int armingSeconds, int gap) {
        Map<HandTest, BitSet> byTest = new HashMap<>();
        List<HandTest> order = new ArrayList<>();
        for (HandTest.Kind kind : HandTest.Kind.inOrder()) {
            List<HandTest> these = new ArrayList<>();
            chosen.stream().filter(t -> candidates.get(t).kind() == kind).forEach(t -> {
                these.add(candidates.get(t));
                byTest.put(candidates.get(t), notices.get(t));
            });
            order.addAll(Sequence.of(these, armingSeconds));
        }
        List<List<Integer>> noticedBy = new ArrayList<>();
        for (int m = 0; m < mishaps; m++) {
            List<Integer> by = new ArrayList<>();
            for (int t = 0; t < order.size(); t++) {
                if (byTest.getOrDefault(order.get(t), new BitSet()).get(m)) {
                    by.add(t);
                }
            }
            noticedBy.add(by);
        }
        return new TestOrder(order, noticedBy, gap);
    }
}
