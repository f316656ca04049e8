package org.loomproof.workshop.planner.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/** Walks every word within the bound, in a fixed order. What depends on poles alone is walked once for all currents. */
public final class Grammar {

    private static final Map<Shape, Enumeration<Word>> WALKED = new ConcurrentHashMap<>();
    private static final Map<Size, Long> COUNTED = new ConcurrentHashMap<>();
    private static final List<Block> BLOCKS = listBlocks();

    /** All words with those relays, that buffer and that pull. */
    record Block(List<Coil> coils, Buffering buffer, Pull pull) {

        private int clampsAndIsolation() {
            return coils.stream().mapToInt(Coil::diodes).sum();
        }

        private boolean isBehindFirst() {
            return coils.size() > 1 && coils.get(1).isBehindFirst();
        }

        private Size size() {
            boolean bufferWorksCoil = coils.stream().anyMatch(coil -> coil.driver() == Coil.Driver.BUFFER);
            return new Size(
                    clampsAndIsolation(),
                    pull != Pull.NONE,
                    coils.size(),
                    isBehindFirst(),
                    buffer != Buffering.NONE,
                    bufferWorksCoil);
        }
    }

    /** What decides how many words a block has: blocks that are alike in this are counted once. */
    private record Size(
            int diodes, boolean pulled, int relays, boolean behindFirst, boolean buffered, boolean bufferWorksCoil) {}

    private Grammar() {}

    /** All words for that pairing, fewest parts first. A block that no word of can be offered is counted without a look at each. */
    public static Enumeration<Word> of(Shape shape) {
        Enumeration<Word> known = WALKED.get(shape);
        if (known != null) {
            return known;
        }
        Map<LeftOut, Long> leftOut = new EnumMap<>(LeftOut.class);
        List<Word> words = new ArrayList<>();
        Judge judge = shape.judge();
        long enumerated = 0;
        for (Block block : BLOCKS) {
            long size = count(block);
            enumerated += size;
            judge.leaveOut(block)
                    .ifPresentOrElse(
                            reason -> leftOut.merge(reason, size, Long::sum),
                            () -> each(
                                    block,
                                    word -> judge.leaveOut(word)
                                            .ifPresentOrElse(
                                                    reason -> leftOut.merge(reason, 1L, Long::sum),
                                                    () -> words.add(word))));
        }
        words.sort(Comparator.comparingInt(Word::parts).thenComparing(Word::toString));
        Enumeration<Word> found = new Enumeration<>(enumerated, leftOut, words);
        WALKED.put(shape, found);
        return found;
    }

    private static long count(Block block) {
        Size size = block.size();
        Long known = COUNTED.get(size);
        if (known != null) {
            return known;
        }
        long[] count = {0};
        each(block, word -> count[0]++);
        COUNTED.put(size, count[0]);
        return count[0];
    }

    /** Tells every word within the bound, once each. */
    static void each(Consumer<Word> told) {
        BLOCKS.forEach(block -> each(block, told));
    }

    /** Tells every word of a block. */
    static void each(Block block, Consumer<Word> told) {
        new Walk(told).take(block);
    }

    private static List<Block> listBlocks() {
        List<Block> blocks = new ArrayList<>();
        for (Pull pull : Pull.values()) {
            for (Buffering buffer : Buffering.values()) {
                boolean buffered = buffer != Buffering.NONE;
                blocks.add(new Block(List.of(), buffer, pull));
                for (Coil first : Coil.beside(buffered)) {
                    blocks.add(new Block(List.of(first), buffer, pull));
                    Stream.concat(Coil.beside(buffered).stream(), Coil.behindFirst().stream())
                            .forEach(second -> blocks.add(new Block(List.of(first, second), buffer, pull)));
                }
            }
        }
        return List.copyOf(blocks);
    }

    private record Walk(Consumer<Word> told) {

        private void take(Block block) {
            List<Coil> coils = block.coils();
            Buffering buffer = block.buffer();
            List<Tie> ties = Tie.all(gates(coils, buffer));
            List<Tie> beyondBody =
                    ties.stream().filter(tie -> tie.gate() != Gate.BUFFER).toList();
            int held = block.clampsAndIsolation();
            for (Tie through : beyondBody) {
                for (Tie fromSupply : beyondBody) {
                    if (!clash(through, fromSupply)
                            && held + through.diodes() + fromSupply.diodes() <= Word.MOST_DIODES) {
                        for (Tie toBody : ties) {
                            take(new Word(through, fromSupply, toBody, coils, buffer, block.pull()));
                        }
                    }
                }
            }
        }

        private void take(Word word) {
            if (isWithinBound(word) && isWellFormed(word)) {
                told.accept(word);
            }
        }

        private static List<Gate> gates(List<Coil> coils, Buffering buffer) {
            List<Gate> gates = new ArrayList<>(List.of(Gate.ALWAYS));
            if (!coils.isEmpty()) {
                gates.addAll(List.of(Gate.MAKE_1, Gate.BREAK_1));
            }
            if (coils.size() > 1) {
                gates.addAll(List.of(Gate.MAKE_2, Gate.BREAK_2));
            }
            if (buffer != Buffering.NONE) {
                gates.add(Gate.BUFFER);
            }
            return gates;
        }

        private static boolean isWithinBound(Word word) {
            return word.diodes() <= Word.MOST_DIODES
                    && word.resistors() <= Word.MOST_RESISTORS
                    && word.coils().size() <= Word.MOST_RELAYS;
        }

        /** Each contact stands in one place, every relay and buffer is used, and a buffer's output goes to the body. */
        private static boolean isWellFormed(Word word) {
            Tie a = word.through();
            Tie b = word.fromSupply();
            Tie c = word.toBody();
            if (clash(a, c) || clash(b, c)) {
                return false;
            }
            List<Coil> coils = word.coils();
            boolean behindFirst = coils.size() > 1 && coils.get(1).isBehindFirst();
            if (behindFirst) {
                // The first relay's contact is in the second one's coil, and 30 cannot be on the target as well.
                if (uses(word, 1)) {
                    return false;
                }
            } else if (!coils.isEmpty() && !uses(word, 1)) {
                return false;
            }
            if (coils.size() > 1 && !uses(word, 2)) {
                return false;
            }
            return word.buffer() == Buffering.NONE
                    || c.gate() == Gate.BUFFER
                    || coils.stream().anyMatch(coil -> coil.driver() == Coil.Driver.BUFFER);
        }

        private static boolean clash(Tie one, Tie other) {
            return one.gate() != Gate.ALWAYS && one.gate() == other.gate();
        }

        private static boolean uses(Word word, int relay) {
            return word.through().gate().relay() == relay
                    || word.fromSupply().gate().relay() == relay
                    || word.toBody().gate().relay() == relay;
        }
    }
}
