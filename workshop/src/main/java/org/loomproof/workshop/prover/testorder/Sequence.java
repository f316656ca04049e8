package org.loomproof.workshop.prover.testorder;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.OperableId;

/**
 * The order of some tests in which doors, keys and seats are touched least, then the least time is spent waiting: what one
 * test has touched the next one may go on with. Exact for few tests, improved pair by pair for many.
 */
final class Sequence {

    /** Up to this many tests every order is looked at, by dynamic programming. */
    private static final int MOST_EXACT = 14;

    /** A touch outweighs any waiting. */
    private static final long TOUCH = 1_000_000;

    private final List<HandTest> tests;
    private final long[][] cost;
    private final long[] first;

    private Sequence(List<HandTest> tests, int armingSeconds) {
        this.tests = tests;
        int n = tests.size();
        this.cost = new long[n][n];
        this.first = new long[n];
        for (int to = 0; to < n; to++) {
            first[to] = waiting(ControllerState.DISARMED, tests.get(to), armingSeconds)
                    + TOUCH * tests.get(to).touches().size();
            for (int from = 0; from < n; from++) {
                cost[from][to] = waiting(end(tests.get(from)), tests.get(to), armingSeconds)
                        + TOUCH * fresh(tests.get(from), tests.get(to));
            }
        }
    }

    /** The tests in that order. */
    static List<HandTest> of(List<HandTest> tests, int armingSeconds) {
        if (tests.isEmpty()) {
            return List.of();
        }
        Sequence sequence = new Sequence(tests, armingSeconds);
        int[] order = tests.size() <= MOST_EXACT ? sequence.exact() : sequence.improved();
        return Arrays.stream(order).mapToObj(tests::get).toList();
    }

    private static int fresh(HandTest from, HandTest to) {
        int fresh = 0;
        for (OperableId operable : to.touches()) {
            fresh += from.touches().contains(operable) ? 0 : 1;
        }
        return fresh;
    }

    /** What the controller does when the test is over. */
    private static ControllerState end(HandTest test) {
        return test.kind() == HandTest.Kind.BY_HAND
                ? test.situations().getLast().controller()
                : ControllerState.DISARMED;
    }

    private static long waiting(ControllerState now, HandTest next, int armingSeconds) {
        if (now == next.from()) {
            return 0;
        }
        return switch (next.from()) {
            case WITHOUT_SUPPLY, DISARMED, OVERRIDE, ARMING -> 1;
            case ARMED, WARNING -> armingSeconds;
            case SOUNDING -> now == ControllerState.ARMED ? 1 : armingSeconds;
        };
    }

    private int[] exact() {
        int n = tests.size();
        long[][] least = new long[1 << n][n];
        int[][] before = new int[1 << n][n];
        for (long[] row : least) {
            Arrays.fill(row, Long.MAX_VALUE);
        }
        for (int k = 0; k < n; k++) {
            least[1 << k][k] = first[k];
            before[1 << k][k] = -1;
        }
        for (int done = 1; done < 1 << n; done++) {
            for (int last = 0; last < n; last++) {
                if (least[done][last] == Long.MAX_VALUE) {
                    continue;
                }
                for (int next = 0; next < n; next++) {
                    int with = done | 1 << next;
                    long sum = least[done][last] + cost[last][next];
                    if (with != done && sum < least[with][next]) {
                        least[with][next] = sum;
                        before[with][next] = last;
                    }
                }
            }
        }
        int done = (1 << n) - 1;
        int last = 0;
        for (int k = 1; k < n; k++) {
            last = least[done][k] < least[done][last] ? k : last;
        }
        int[] order = new int[n];
        for (int at = n - 1; at >= 0; at--) {
            order[at] = last;
            int earlier = before[done][last];
            done &= ~(1 << last);
            last = earlier;
        }
        return order;
    }

    /** From test to nearest test, then one at a time put where it costs least, until nothing gets better. */
    private int[] improved() {
        List<Integer> order = nearest();
        boolean better = true;
        while (better) {
            better = false;
            for (int from = 0; from < order.size(); from++) {
                for (int to = 0; to < order.size(); to++) {
                    List<Integer> moved = new ArrayList<>(order);
                    moved.subList(from, from + 1).clear();
                    moved.add(to, order.get(from));
                    if (sum(moved) < sum(order)) {
                        order = moved;
                        better = true;
                    }
                }
            }
        }
        return order.stream().mapToInt(k -> k).toArray();
    }

    private List<Integer> nearest() {
        List<Integer> order = new ArrayList<>();
        List<Integer> left =
                new ArrayList<>(IntStream.range(0, tests.size()).boxed().toList());
        while (!left.isEmpty()) {
            int next = left.stream()
                    .min(Comparator.comparingLong(k -> order.isEmpty() ? first[k] : cost[order.getLast()][k]))
                    .orElseThrow();
            order.add(next);
            left.removeIf(k -> k == next);
        }
        return order;
    }

    private long sum(List<Integer> order) {
        long sum = first[order.getFirst()];
        for (int k = 1; k < order.size(); k++) {
            sum += cost[order.get(k - 1)][order.get(k)];
        }
        return sum;
    }
}
