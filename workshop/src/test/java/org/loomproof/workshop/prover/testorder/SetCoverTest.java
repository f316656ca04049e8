package org.loomproof.workshop.prover.testorder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;

class SetCoverTest {

    /** The textbook case in which always taking the largest set is not best: two rows, and columns that grow twofold. */
    @Test
    void theLargestSetIsNotAlwaysTheRightOne() {
        List<BitSet> sets = List.of(
                of(0, 1, 2, 3, 4, 5, 6),
                of(7, 8, 9, 10, 11, 12, 13),
                of(0, 7),
                of(1, 2, 8, 9),
                of(3, 4, 5, 6, 10, 11, 12, 13));
        SetCover.Choice choice = SetCover.solve(sets, new long[] {1, 1, 1, 1, 1});
        assertThat(choice.chosen()).containsExactly(0, 1);
        assertThat(choice.isProvenBest()).isTrue();
    }

    static LongStream seeds() {
        return Sample.seeds(30, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noChoiceOfAllIsCheaper(long seed) {
        Random random = new Random(seed);
        List<BitSet> sets = new ArrayList<>();
        long[] costs = new long[9];
        for (int s = 0; s < 9; s++) {
            BitSet set = new BitSet();
            for (int e = 0; e < 12; e++) {
                set.set(e, random.nextInt(4) == 0);
            }
            sets.add(set);
            costs[s] = 1L + random.nextInt(5);
        }
        SetCover.Choice choice = SetCover.solve(sets, costs);
        assertThat(choice.isProvenBest()).isTrue();
        assertThat(choice.cost()).isEqualTo(cheapest(sets, costs));
        BitSet held = new BitSet();
        choice.chosen().forEach(s -> held.or(sets.get(s)));
        assertThat(held).isEqualTo(all(sets));
    }

    @Test
    void aSearchThatIsCutShortSaysHowFarItMayBeOff() {
        Random random = new Random(Sample.seed());
        List<BitSet> sets = new ArrayList<>();
        for (int s = 0; s < 60; s++) {
            BitSet set = new BitSet();
            for (int e = 0; e < 200; e++) {
                set.set(e, random.nextInt(8) == 0);
            }
            sets.add(set);
        }
        long[] costs = LongStream.generate(() -> 1).limit(60).toArray();
        SetCover.Choice choice = SetCover.solve(sets, costs, 50);
        assertThat(choice.isProvenBest()).isFalse();
        assertThat(choice.atLeast()).isPositive().isLessThan(choice.cost());
    }

    private static long cheapest(List<BitSet> sets, long[] costs) {
        long best = Long.MAX_VALUE;
        for (int choice = 0; choice < 1 << sets.size(); choice++) {
            BitSet held = new BitSet();
            long cost = 0;
            for (int s = 0; s < sets.size(); s++) {
                if ((choice & 1 << s) != 0) {
                    held.or(sets.get(s));
                    cost += costs[s];
                }
            }
            best = held.equals(all(sets)) ? Math.min(best, cost) : best;
        }
        return best;
    }

    private static BitSet all(List<BitSet> sets) {
        BitSet all = new BitSet();
        sets.forEach(all::or);
        return all;
    }

    private static BitSet of(int... elements) {
        BitSet set = new BitSet();
        for (int element : elements) {
            set.set(element);
        }
        return set;
    }
}
