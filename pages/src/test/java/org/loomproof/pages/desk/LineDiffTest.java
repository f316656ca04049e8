package org.loomproof.pages.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What differs between two texts of lines. */
class LineDiffTest {

    @Test
    void onlyTheLinesThatDifferAreNamed() {
        assertThat(LineDiff.between("a\nb\nc\nd\n", "a\nB\nc\nd\ne\n").lines())
                .extracting(line -> (line.isAdded() ? "+" : "-") + line.text())
                .containsExactly("-b", "+B", "+e");
        assertThat(LineDiff.between("a\n", "a\n").lines()).isEmpty();
        assertThat(LineDiff.between("", "a\nb").lines()).hasSize(2).allMatch(LineDiff.Line::isAdded);
    }

    /** The diff turns the one into the other: what stays of both is the same, in order. */
    @Test
    void takenAwayAndAddedTheRestIsTheSame() {
        Random chance = new Random(8);
        for (int round = 0; round < 300; round++) {
            String before = text(chance);
            String after = text(chance);
            LineDiff diff = LineDiff.between(before, after);
            assertThat(without(before, diff, false)).isEqualTo(without(after, diff, true));
        }
    }

    private static String text(Random chance) {
        return IntStream.range(0, chance.nextInt(12))
                .mapToObj(i -> "line " + chance.nextInt(4))
                .collect(Collectors.joining("\n"));
    }

    /** Every line of the diff on one side is found in that side's text in order, and left out. */
    private static List<String> without(String text, LineDiff diff, boolean added) {
        List<String> left = new ArrayList<>(text.lines().toList());
        List<String> gone = diff.lines().stream()
                .filter(line -> line.isAdded() == added)
                .map(LineDiff.Line::text)
                .toList();
        if (!gone.isEmpty()) {
            assertThat(left).containsSubsequence(gone);
        }
        gone.forEach(line -> assertThat(left.remove(line)).isTrue());
        return left.stream().sorted().toList();
    }
}
