package org.loomproof.workshop.planner.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.grammar.ReadingBench.Seen;
import org.loomproof.workshop.planner.grammar.Sense.Held;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/** What reads wires is left out rightly: the engine says the same of words built on a bench. */
class SenseTest {

    /** Each resistor of a kilohm draws 13 mA at the most: more is a way from pole to pole. */
    private static final double SHORT_AMPS = 0.2;

    private static final int WORDS_A_SHAPE = Sample.count(25, 600);

    static List<Sense> shapes() {
        List<Sense> all = new ArrayList<>();
        List<List<Held>> wires = List.of(
                List.of(Held.PULLED_HIGH, Held.LOW),
                List.of(Held.OPEN, Held.LOW),
                List.of(Held.PULLED_LOW, Held.HIGH),
                List.of(Held.OPEN, Held.HIGH),
                List.of(Held.LOW, Held.OPEN),
                List.of(Held.HIGH, Held.OPEN),
                List.of(Held.LOW, Held.PULLED_HIGH));
        for (List<Held> wire : wires) {
            for (Side reads : Side.values()) {
                for (int bits = 0; bits < 8; bits++) {
                    all.add(new Sense(
                            wire.getFirst(), wire.getLast(), reads, (bits & 1) != 0, (bits & 2) != 0, (bits & 4) != 0));
                }
            }
        }
        return Sample.of(all, 28);
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void everyWordIsCountedOnce(Sense sense) {
        Enumeration<Word> found = Grammar.of(sense);

        long leftOut =
                found.leftOut().values().stream().mapToLong(Long::longValue).sum();
        assertThat(leftOut + found.words().size()).isEqualTo(found.enumerated());
        assertThat(found.words()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void theEngineSaysTheSameOfWordsOnABench(Sense sense) {
        Judge judge = sense.judge();
        Map<LeftOut, List<Word>> byReason = new EnumMap<>(LeftOut.class);
        Grammar.each(word -> {
            Grammar.Block block = new Grammar.Block(word.coils(), word.buffer(), word.pull());
            if (judge.leaveOut(block).isEmpty()) {
                judge.leaveOut(word)
                        .ifPresent(reason -> byReason.computeIfAbsent(reason, r -> new ArrayList<>())
                                .add(word));
            }
        });

        assertThat(Grammar.of(sense).words())
                .allSatisfy(word -> assertThat(faults(sense, word)).isEmpty());
        for (LeftOut reason : List.of(LeftOut.SHORT, LeftOut.WORKS_AT_REST, LeftOut.NEVER_WORKS)) {
            assertThat(drawn(byReason, reason))
                    .as("%s", reason)
                    .allSatisfy(word -> assertThat(faults(sense, word)).isNotEmpty());
        }
    }

    private static List<Word> drawn(Map<LeftOut, List<Word>> byReason, LeftOut reason) {
        List<Word> all = byReason.getOrDefault(reason, List.of());
        return new Random(7919)
                .ints(all.isEmpty() ? 0 : WORDS_A_SHAPE, 0, Math.max(1, all.size()))
                .mapToObj(all::get)
                .distinct()
                .toList();
    }

    private static List<String> faults(Sense sense, Word word) {
        ReadingBench bench = new ReadingBench(word, sense);
        Seen rest = bench.see(sense.rest(), sense.rest());
        Seen one = bench.see(sense.active(), sense.rest());
        Seen all = bench.see(sense.active(), sense.active());
        List<String> faults = new ArrayList<>();
        if (!one.active() || !all.active()) {
            faults.add("is not read");
        }
        if (!rest.rest()) {
            faults.add("is read at rest");
        }
        if (Stream.of(rest, one, all).anyMatch(seen -> seen.amps() > SHORT_AMPS)) {
            faults.add("from pole to pole");
        }
        return faults;
    }

    /** Anything that pulls itself to the other pole and reads one plain wire of its own pole is joined, and nothing else. */
    @Test
    void aPlainWireOfItsOwnPoleIsJoinedAndNothingElse() {
        assertThat(Grammar.of(new Sense(Held.PULLED_HIGH, Held.LOW, Side.LOW, true, false, false))
                        .words())
                .containsExactly(Word.STRAIGHT);
    }

    /** A wire that is let go gets a pull, and a 5 V wire that goes to ground is turned round by a buffer. */
    @Test
    void pullsAndBuffersAreFoundWhereTheyFit() {
        assertThat(Grammar.of(new Sense(Held.LOW, Held.OPEN, Side.HIGH, true, false, false))
                        .words())
                .containsExactly(new Word(Tie.WIRE, Tie.NONE, Tie.NONE, List.of(), Buffering.NONE, Pull.UP));
        assertThat(Grammar.of(new Sense(Held.PULLED_HIGH, Held.LOW, Side.HIGH, true, true, false))
                        .words())
                .contains(new Word(
                        Tie.NONE, Tie.resistor(Gate.ALWAYS), Tie.gated(Gate.BUFFER), List.of(), Buffering.ON_SUPPLY));
    }
}
