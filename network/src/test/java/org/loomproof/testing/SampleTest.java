package org.loomproof.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SampleTest {

    private static final List<Integer> HUNDRED = IntStream.range(0, 100).boxed().toList();

    @Test
    void aSampleKeepsTheOrderAndIsDrawnTheSameTwice() {
        List<Integer> drawn = Sample.of(HUNDRED, 10);
        assertThat(drawn).hasSize(Sample.count(10, 100)).isSorted().doesNotHaveDuplicates();
        assertThat(Sample.of(HUNDRED, 10)).isEqualTo(drawn);
    }

    @Test
    void aSmallerSampleLiesWithinALargerOne() {
        assertThat(Sample.of(HUNDRED, 10)).containsAll(Sample.of(HUNDRED, 3));
    }

    @Test
    void namesShareTheListOut() {
        assertThat(IntStream.range(0, 8)
                        .boxed()
                        .flatMap(k -> Sample.oneOf(List.of("a", "b", "c", "d"), "page " + k).stream()))
                .containsOnly("a", "b", "c", "d")
                .contains("a", "b", "c", "d");
    }

    @Test
    void whatIsSmallEnoughIsWalkedWhole() {
        assertThat(Sample.of(HUNDRED, 100)).isEqualTo(HUNDRED);
    }

    @Test
    void thereAreAsManySeedsAsCases() {
        assertThat(Sample.seeds(5, 50).count()).isEqualTo(Sample.count(5, 50));
    }
}
