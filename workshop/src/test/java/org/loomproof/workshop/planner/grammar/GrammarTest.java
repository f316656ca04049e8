package org.loomproof.workshop.planner.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.grammar.Bench.Stand;

/** The grammar is walked whole, and what is left out is left out rightly: the engine says the same of words built on a bench. */
class GrammarTest {

    /** The load draws 12.6 mA and every coil some; more is a way from pole to pole. */
    private static final double SHORT_AMPS = 0.03;

    private static final int WORDS_A_SHAPE = Sample.count(60, 2000);

    static Stream<Drive> shapes() {
        List<Drive> all = new ArrayList<>();
        for (Side output : Side.values()) {
            for (Side active : Side.values()) {
                for (int bits = 0; bits < 8; bits++) {
                    all.add(new Drive(output, active, (bits & 1) != 0, (bits & 2) != 0, false, (bits & 4) != 0));
                }
            }
            all.add(new Drive(output, Side.LOW, false, false, true, false));
        }
        return all.stream();
    }

    @Test
    void everyWordIsWalkedOnceAndWithinTheBound() {
        Set<Word> seen = new HashSet<>();
        Grammar.each(word -> {
            assertThat(seen.add(word)).as("%s", word).isTrue();
            assertThat(word.diodes()).isLessThanOrEqualTo(3);
            assertThat(word.resistors()).isLessThanOrEqualTo(3);
            assertThat(word.coils()).hasSizeLessThanOrEqualTo(2);
        });
        Note.that("the grammar of couplings has " + seen.size() + " words for one output and its targets");
    }

    @Test
    void whatTheTradeNamesIsFoundWhereItFits() {
        assertThat(words(new Drive(Side.LOW, Side.LOW, false, false, false, false)))
                .contains(Word.STRAIGHT);
        assertThat(words(new Drive(Side.LOW, Side.LOW, false, true, false, false)))
                .contains(Word.clamped());
        for (Side output : Side.values()) {
            assertThat(words(new Drive(output, output, true, false, false, false)))
                    .contains(Word.diode(output));
            assertThat(words(new Drive(output, output, false, false, false, true)))
                    .contains(Word.diode(output));
            assertThat(words(new Drive(output, Side.LOW, false, false, true, false)))
                    .contains(Word.stepByRelay(output));
            for (Side active : Side.values()) {
                assertThat(words(new Drive(output, active, false, false, false, false)))
                        .contains(Word.relay(output, active, false));
                assertThat(words(new Drive(output, active, true, false, false, true)))
                        .contains(Word.relay(output, active, false), Word.relay(output, active, true));
            }
        }
        assertThat(words(new Drive(Side.LOW, Side.LOW, false, false, true, false)))
                .contains(Word.step());
    }

    private static List<Word> words(Drive drive) {
        return Grammar.of(drive).words();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void everyWordIsCountedOnce(Drive drive) {
        Enumeration<Word> found = Grammar.of(drive);

        long leftOut =
                found.leftOut().values().stream().mapToLong(Long::longValue).sum();
        assertThat(leftOut + found.words().size()).isEqualTo(found.enumerated());
        assertThat(found.words()).isNotEmpty().doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void theEngineSaysTheSameOfWordsOnABench(Drive drive) {
        if (drive.stepped()) {
            return;
        }
        Judge judge = drive.judge();
        Map<LeftOut, List<Word>> byReason = new EnumMap<>(LeftOut.class);
        Grammar.each(word -> judge.leaveOut(new Grammar.Block(word.coils(), word.buffer(), word.pull()))
                .or(() -> judge.leaveOut(word))
                .ifPresent(reason ->
                        byReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(word)));

        assertThat(Grammar.of(drive).words())
                .allSatisfy(word -> assertThat(faults(drive, word)).isEmpty());
        for (LeftOut reason : List.of(LeftOut.SHORT, LeftOut.WORKS_AT_REST, LeftOut.NEVER_WORKS)) {
            assertThat(drawn(byReason, reason))
                    .as("%s", reason)
                    .allSatisfy(word -> assertThat(faults(drive, word)).isNotEmpty());
        }
    }

    private static List<Word> drawn(Map<LeftOut, List<Word>> byReason, LeftOut reason) {
        List<Word> all = byReason.getOrDefault(reason, List.of());
        Random random = new Random(7919);
        return random.ints(all.isEmpty() ? 0 : WORDS_A_SHAPE, 0, Math.max(1, all.size()))
                .mapToObj(all::get)
                .distinct()
                .toList();
    }

    /** What is wrong with a word: at work, at rest, and while a hand works the car's own switch. */
    private static List<String> faults(Drive drive, Word word) {
        Bench bench = new Bench(word, drive);
        List<String> faults = new ArrayList<>();
        if (!bench.see(new Stand(true, false)).worked()) {
            faults.add("does not work");
        }
        if (bench.see(new Stand(false, false)).worked()) {
            faults.add("works at rest");
        }
        for (boolean works : new boolean[] {false, true}) {
            for (boolean own : new boolean[] {false, true}) {
                if (bench.see(new Stand(works, own)).amps() > SHORT_AMPS) {
                    faults.add("from pole to pole, " + works + " " + own);
                }
            }
        }
        return faults;
    }

    @Test
    void reasonsAreGivenInAFixedOrder() {
        Drive drive = new Drive(Side.LOW, Side.LOW, true, true, false, false);
        Enumeration<Word> less = Grammar.of(drive).leavingOut(word -> Optional.of(LeftOut.CURRENT));
        assertThat(less.words()).isEmpty();
        assertThat(less.leftOut())
                .containsEntry(LeftOut.CURRENT, (long) Grammar.of(drive).words().size());
        assertThat(less.enumerated()).isEqualTo(Grammar.of(drive).enumerated());
    }
}
