package org.loomproof.network.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.loomproof.network.netlist.Setting;

/**
 * An order in which settings that follow each other differ in few parts: the one given, or that of a reflected binary code
 * (Gray, US patent 2 632 058, 1953) over the parts that differ at all, whichever throws fewer.
 */
final class SweepOrder {
    /** Pairs of neighbours looked at before any work is put into another order, and how few differences are good enough. */
    private static final int SAMPLE = 50;

    private static final int GOOD_ENOUGH = 4;

    private SweepOrder() {}

    /** Places in the list, in the order in which to take them. */
    static int[] of(List<Setting> settings) {
        int[] given = IntStream.range(0, settings.size()).toArray();
        if (isGoodEnough(settings)) {
            return given;
        }
        long[][] differing = differing(settings);
        long[][] rank = Arrays.stream(differing).map(SweepOrder::grayRank).toArray(long[][]::new);
        int[] gray = Arrays.stream(given)
                .boxed()
                .sorted(Comparator.<Integer, long[]>comparing(k -> rank[k], Arrays::compareUnsigned)
                        .thenComparingInt(k -> k))
                .mapToInt(Integer::intValue)
                .toArray();
        return thrown(differing, gray) < thrown(differing, given) ? gray : given;
    }

    private static boolean isGoodEnough(List<Setting> settings) {
        int pairs = Math.min(settings.size() - 1, SAMPLE);
        int differences = 0;
        for (int k = 0; k < pairs; k++) {
            // Spread over the whole list, but the same ones each time.
            int at = (int) ((long) k * (settings.size() - 1) / pairs);
            differences += differences(settings.get(at), settings.get(at + 1)).length;
        }
        return differences <= GOOD_ENOUGH * pairs;
    }

    private static int[] differences(Setting one, Setting other) {
        IntList parts = new IntList();
        int count = one.network().parts().size();
        int part = one.findDifference(other, 0);
        while (part >= 0) {
            parts.add(part);
            part = part + 1 < count ? one.findDifference(other, part + 1) : -1;
        }
        return parts.toArray();
    }

    /** Per setting, a bit for each part that is ever set otherwise than in the first: whether it is. Highest bit first. */
    private static long[][] differing(List<Setting> settings) {
        Map<Integer, Integer> columns = new HashMap<>();
        int[][] parts = new int[settings.size()][];
        for (int k = 0; k < parts.length; k++) {
            parts[k] = differences(settings.getFirst(), settings.get(k));
            for (int part : parts[k]) {
                columns.putIfAbsent(part, columns.size());
            }
        }
        int words = (columns.size() + Long.SIZE - 1) / Long.SIZE;
        long[][] bits = new long[parts.length][words];
        for (int k = 0; k < parts.length; k++) {
            for (int part : parts[k]) {
                int column = columns.getOrDefault(part, 0);
                bits[k][column / Long.SIZE] |= Long.MIN_VALUE >>> column % Long.SIZE;
            }
        }
        return bits;
    }

    /** Where these bits come in the reflected binary code: each bit the parity of all from the highest to itself. */
    private static long[] grayRank(long[] bits) {
        long[] rank = new long[bits.length];
        long carry = 0;
        for (int w = 0; w < bits.length; w++) {
            long parity = bits[w];
            for (int shift = 1; shift < Long.SIZE; shift <<= 1) {
                parity ^= parity >>> shift;
            }
            rank[w] = parity ^ carry;
            carry = -(rank[w] & 1);
        }
        return rank;
    }

    private static long thrown(long[][] bits, int[] order) {
        long thrown = 0;
        for (int k = 1; k < order.length; k++) {
            for (int w = 0; w < bits[order[k]].length; w++) {
                thrown += Long.bitCount(bits[order[k]][w] ^ bits[order[k - 1]][w]);
            }
        }
        return thrown;
    }
}
